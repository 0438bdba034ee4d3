package org.cupwright.policy;

import java.util.Optional;

record WholeNumberSettingType(int least, int greatest) implements SettingType<Integer> {
    @Override
    public Optional<Integer> read(String text) {
        try {
            int value = Integer.parseInt(text.strip());
            return value >= least && value <= greatest ? Optional.of(value) : Optional.empty();
        } catch (NumberFormatException notANumber) {
            return Optional.empty();
        }
    }

    @Override
    public String write(Integer value) {
        return value.toString();
    }

    @Override
    public String accepts() {
        return "whole number, " + least + " to " + greatest;
    }
}
