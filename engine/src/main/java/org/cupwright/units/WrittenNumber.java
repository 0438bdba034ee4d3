package org.cupwright.units;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers as people type them: {@code 12}, {@code 12.5}, {@code 12,5}, and {@code 12½} as it stands on the card. */
public final class WrittenNumber {
    private static final Pattern FORM = Pattern.compile("([+-]?)([0-9]{0,15})(?:[.,]([0-9]{1,330})|(½))?");

    private WrittenNumber() {}

    /** As people type it, without a decimal where it has none. */
    public static String of(double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }

    /** Empty for what is no such number; powers of ten, other scripts' digits and the like are none. */
    public static Optional<Double> find(String text) {
        Matcher form = FORM.matcher(text.strip());
        if (!form.matches() || (form.group(2).isEmpty() && form.group(4) == null)) {
            return Optional.empty();
        }
        String decimals = form.group(4) != null ? "5" : form.group(3) != null ? form.group(3) : "0";
        return Optional.of(Double.parseDouble(form.group(1) + "0" + form.group(2) + "." + decimals));
    }
}
