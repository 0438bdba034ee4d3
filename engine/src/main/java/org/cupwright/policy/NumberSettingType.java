package org.cupwright.policy;

import java.util.Optional;

record NumberSettingType(double least, double greatest) implements SettingType<Double> {
    @Override
    public Optional<Double> read(String text) {
        try {
            double value = Double.parseDouble(text.strip());
            return value >= least && value <= greatest ? Optional.of(value) : Optional.empty();
        } catch (NumberFormatException notANumber) {
            return Optional.empty();
        }
    }

    @Override
    public String write(Double value) {
        return plain(value);
    }

    @Override
    public String accepts() {
        return plain(least) + " to " + plain(greatest);
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9
                ? Long.toString((long) value)
                : Double.toString(value);
    }
}
