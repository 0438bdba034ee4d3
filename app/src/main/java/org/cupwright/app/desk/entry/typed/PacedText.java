package org.cupwright.app.desk.entry.typed;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.green.Side;
import org.cupwright.message.Message;
import org.cupwright.units.WrittenNumber;

/** A place in paces as a form has it: {@code 12½} on in one field, {@code L5} or {@code 5L} in another. */
public final class PacedText {
    /** Longer greens there are none (our choice). */
    private static final double MOST_PACES = 1000;

    private static final Pattern SIDE = Pattern.compile("(?i)([LR]?) *([0-9.,½]+) *([LR]?)");

    private PacedText() {}

    /** @throws org.cupwright.message.Problem at {@code on} or {@code side} */
    public static Spot read(String on, String side) {
        double onPaces = paces(on).orElseThrow(() -> LogProblems.value("on", on, Message.of("try.log.on")));
        Matcher form = SIDE.matcher(side.strip());
        boolean oneLetter =
                form.matches() && form.group(1).isEmpty() != form.group(3).isEmpty();
        Optional<Double> sidePaces = oneLetter ? paces(form.group(2)) : Optional.empty();
        if (sidePaces.isEmpty()) {
            throw LogProblems.value("side", side, Message.of("try.log.side"));
        }
        boolean left = (form.group(1) + form.group(3)).equalsIgnoreCase("L");
        return new Spot.Paced(onPaces, left ? Side.LEFT : Side.RIGHT, sidePaces.get());
    }

    private static Optional<Double> paces(String text) {
        return WrittenNumber.find(text).filter(paces -> paces >= 0 && paces < MOST_PACES);
    }
}
