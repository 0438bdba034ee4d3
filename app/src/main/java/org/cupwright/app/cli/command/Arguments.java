package org.cupwright.app.cli.command;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.app.desk.Spot;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Side;
import org.cupwright.units.WrittenNumber;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;

/** Reads arguments that have a form of their own. */
public record Arguments(CommandSpec spec) {
    private static final Pattern LETTER_LAST = Pattern.compile("([0-9.½]+)([LRlr])");

    /** A number as an option's value. */
    public static Double number(String text) {
        return WrittenNumber.find(text)
                .orElseThrow(() -> new TypeConversionException("'" + text + "' is not a number"));
    }

    /** {@code E,N}. */
    public MapPoint point(String option, String text) {
        String[] parts = text.split(",", -1);
        if (parts.length == 2) {
            double east = number(option, parts[0], text);
            double north = number(option, parts[1], text);
            return new MapPoint(east, north);
        }
        throw wrong(option + " takes two numbers, E,N in the course's frame, not '" + text + "'.", text);
    }

    private double number(String option, String part, String text) {
        return WrittenNumber.find(part)
                .orElseThrow(() ->
                        wrong(option + " takes two numbers, E,N in the course's frame, not '" + text + "'.", text));
    }

    /** {@code 22} and {@code L5}, or {@code 5L} as some say it. */
    public Spot.Paced paced(double on, String sideText) {
        Matcher lastLetter = LETTER_LAST.matcher(sideText);
        String typed = lastLetter.matches() ? lastLetter.group(2) + lastLetter.group(1) : sideText;
        if (!typed.matches("(?i)[LR]([0-9]{0,3}½|[0-9]{1,3}([.][0-9]{1,3})?)")) {
            throw wrong("--side takes L or R and paces, such as L5, not '" + sideText + "'.", sideText);
        }
        if (!(on >= 0 && on < 1000)) {
            throw wrong("--on takes paces of 0 and more, not " + on + ".", Double.toString(on));
        }
        Side side = Character.toUpperCase(typed.charAt(0)) == 'L' ? Side.LEFT : Side.RIGHT;
        return new Spot.Paced(on, side, number(typed.substring(1)));
    }

    /** A table is of one kind of entries. */
    public void tableOf(boolean csv, String kind) {
        if (csv && kind == null) {
            throw wrong("A table holds one kind of entries: give --kind K. cupwright log kinds lists them.", "");
        }
        if (!csv && kind != null) {
            throw wrong("--kind goes with --csv: as JSON the logbook is written and read whole.", kind);
        }
    }

    public ParameterException wrong(String what, String value) {
        return new ParameterException(spec.commandLine(), what, null, value);
    }
}
