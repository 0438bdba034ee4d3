package org.cupwright.app.desk;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Measure;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.turf.signal.CutterStop;
import org.cupwright.units.WrittenNumber;

/**
 * How deep a cutter's stop belongs for a cup.
 *
 * @param cupMillimetres the cup's height, foot to rim
 * @param depthMillimetres the stop's depth
 */
public record StopForCup(double cupMillimetres, double depthMillimetres) {
    public static final double MILLIMETRES_PER_INCH = 25.4;

    /**
     * Lower and higher cups were hardly measured in the unit they are given in (our choice: the commonest is 4 in, 102
     * mm).
     */
    private static final double LOWEST_MILLIMETRES = 60;

    private static final double HIGHEST_MILLIMETRES = 200;

    private static final double IMPOSSIBLE_MILLIMETRES = 300;

    private static final Pattern HEIGHT = Pattern.compile("([0-9]{1,6}(?:[.,][0-9]{1,6})?) *(mm|in|inches|\")?");

    /**
     * For a height as it is typed: {@code 102}, {@code 102mm}, {@code 4in}.
     *
     * @param sure whether a height that looks like the other unit is meant
     */
    public static StopForCup of(String typed, boolean sure) {
        Matcher height = HEIGHT.matcher(typed.strip().toLowerCase(Locale.ROOT));
        if (!height.matches()) {
            throw notOne(typed);
        }
        double number = Double.parseDouble(height.group(1).replace(',', '.'));
        boolean inches = height.group(2) != null && !height.group(2).equals("mm");
        double millimetres = inches ? number * MILLIMETRES_PER_INCH : number;
        if (!sure) {
            ask(number, inches, millimetres);
        }
        if (!(millimetres > 0 && millimetres < IMPOSSIBLE_MILLIMETRES)) {
            throw notOne(typed);
        }
        return new StopForCup(millimetres, CutterStop.depthMillimetres(millimetres));
    }

    private static void ask(double number, boolean inches, double millimetres) {
        if (likely(millimetres)) {
            return;
        }
        Measure given = Measure.of(number, inches ? "in" : "mm");
        double otherwise = inches ? number : number * MILLIMETRES_PER_INCH;
        if (!likely(otherwise)) {
            throw asked(
                    Message.of("problem.cutterStop.unlikely", given), number, Message.of("try.cutterStop.unlikely"));
        }
        Measure other = Measure.of(number, inches ? "mm" : "in");
        Measure would = inches ? Measure.of(number / MILLIMETRES_PER_INCH, "in") : Measure.of(otherwise, "mm");
        Name typed = new Name(WrittenNumber.of(number) + (inches ? "mm" : "in"));
        throw asked(
                Message.of("problem.cutterStop.inches", given, other, would),
                number,
                Message.of("try.cutterStop.inches", typed, given));
    }

    private static boolean likely(double millimetres) {
        return millimetres >= LOWEST_MILLIMETRES && millimetres <= HIGHEST_MILLIMETRES;
    }

    private static Problem asked(Message what, double number, Message advice) {
        return Problem.of(what, "cupHeight", WrittenNumber.of(number), advice);
    }

    private static Problem notOne(String typed) {
        return Problem.of("cutterStop.height", "cupHeight", typed, new Name("'" + typed + "'"));
    }
}
