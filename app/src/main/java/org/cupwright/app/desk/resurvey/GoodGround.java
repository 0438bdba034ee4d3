package org.cupwright.app.desk.resurvey;

import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Green;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.field.GreenField;
import org.cupwright.green.field.GroundArea;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.Verdict;
import org.cupwright.holelocation.judging.GreenJudge;
import org.cupwright.holelocation.judging.GreenJudgement;

/**
 * Where a hole may be cut by two surveys of a green, at one green speed, nothing lying on it and the same level
 * readings taken in.
 *
 * @param beforeSquareMetres ground that was good
 * @param nowSquareMetres ground that is good
 * @param gained good now, and not before
 * @param lost good before, and refused now
 * @param openNow good before, and now to be used with care or not known: the newer survey knows it less well, or it has
 *     become worse
 */
public record GoodGround(double beforeSquareMetres, double nowSquareMetres, Part gained, Part lost, Part openNow) {
    /**
     * Some ground.
     *
     * @param squareMetres how much of it there is
     * @param largest a point in the largest piece of it
     */
    public record Part(double squareMetres, Optional<MapPoint> largest) {}

    static GoodGround between(Green before, Green now, CourseDay day) {
        GreenJudgement was = judged(before, day);
        GreenJudgement is = judged(now, day);
        return new GoodGround(
                part(was, is, (a, b) -> a == Verdict.PASS).squareMetres(),
                part(was, is, (a, b) -> b == Verdict.PASS).squareMetres(),
                part(was, is, (a, b) -> a != Verdict.PASS && b == Verdict.PASS),
                part(was, is, (a, b) -> a == Verdict.PASS && b == Verdict.FAIL),
                part(was, is, (a, b) -> a == Verdict.PASS && b != Verdict.PASS && b != Verdict.FAIL));
    }

    private static GreenJudgement judged(Green green, CourseDay day) {
        DayConditions conditions =
                new DayConditions(day.fastest(), day.rain().expected(), false, GroundOnDay.clear(day.date()));
        return new GreenJudge(green, conditions, day.policy()).judgeGreen();
    }

    private static Part part(GreenJudgement was, GreenJudgement is, BiPredicate<Verdict, Verdict> wanted) {
        GreenField field = new GreenField(was.green().hole().green(), spot -> {
            Optional<Verdict> before = was.findVerdict(was.lattice().nearest(spot));
            Optional<Verdict> now = is.findVerdict(is.lattice().nearest(spot));
            return before.isPresent() && now.isPresent() && wanted.test(before.get(), now.get()) ? 1 : Double.NaN;
        });
        List<GroundArea> pieces = field.areasAbove(0);
        double squareMetres =
                pieces.stream().mapToDouble(GroundArea::squareMetres).sum();
        return new Part(squareMetres, pieces.stream().findFirst().map(GroundArea::inside));
    }
}
