package org.cupwright.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.green.Green;
import org.cupwright.green.Ground;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.SurveyPoint;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.judging.GreenJudge;
import org.cupwright.holelocation.judging.GreenJudgement;
import org.cupwright.policy.Policy;
import org.cupwright.units.GreenSpeed;

/**
 * Judges whole greens of the invented course, until eighteen surveyed ones are done, and single positions; prints the
 * times and checks the answers: shares sum to one, and single positions agree with their greens.
 *
 * <p>Run by benchmarks/run, or as a main class with the benchmarks module's class path.
 */
public final class JudgeEighteenGreens {
    private static final int GREENS = 18;
    private static final DayConditions DAY =
            new DayConditions(new GreenSpeed(10.5), true, false, GroundOnDay.clear(LocalDate.of(2026, 6, 20)));

    private JudgeEighteenGreens() {}

    public static void main(String[] arguments) throws SurveyTooThin {
        List<Green> greens = surveyedGreens();
        long cells = 0;
        long started = System.nanoTime();
        double processor = processorSeconds();
        List<GreenJudge> judges = new ArrayList<>();
        for (int i = 0; i < GREENS; i++) {
            GreenJudge judge = new GreenJudge(greens.get(i % greens.size()), DAY, Policy.defaults());
            cells += check(judge);
            judges.add(judge);
        }
        double seconds = (System.nanoTime() - started) / 1e9;
        System.out.printf(
                "%d greens, %d cells: %.2f s, %.2f s of processor time%n",
                GREENS, cells, seconds, processorSeconds() - processor);
        positions(judges);
    }

    /** Tells how much the machine's other work disturbed the time. */
    private static double processorSeconds() {
        OperatingSystemMXBean system = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
        return system.getProcessCpuTime() / 1e9;
    }

    private static List<Green> surveyedGreens() throws SurveyTooThin {
        DemoCourse demo = new DemoCourse(1);
        List<Green> greens = new ArrayList<>();
        for (Hole hole : demo.course().holes()) {
            List<SurveyPoint> points = demo.survey(hole.id());
            if (!points.isEmpty()) {
                greens.add(new Green(hole, ground(points, hole)));
            }
        }
        return greens;
    }

    private static Ground ground(List<SurveyPoint> points, Hole hole) throws SurveyTooThin {
        return SurveyedGround.fit(hole.green(), SurveyPoints.scattered(points), Policy.defaults());
    }

    private static long check(GreenJudge judge) {
        GreenJudgement green = judge.judgeGreen();
        GreenJudgement.Shares shares = green.shares();
        double sum = shares.pass() + shares.caution() + shares.fail() + shares.notSurveyed();
        if (Math.abs(sum - 1) > 1e-9) {
            throw new IllegalStateException("shares sum to " + sum);
        }
        System.out.printf(
                "hole %s: %.0f m², pass %.2f, caution %.2f, fail %.2f, not surveyed %.2f, conceded %s%n",
                green.green().hole().id(),
                green.areaSquareMetres(),
                shares.pass(),
                shares.caution(),
                shares.fail(),
                shares.notSurveyed(),
                green.concessions());
        return Math.round(green.areaSquareMetres() * 16);
    }

    /** Single positions between the lattice's spots, so that each is measured afresh. */
    private static void positions(List<GreenJudge> judges) {
        double sum = 0;
        int judged = 0;
        double slowest = 0;
        for (GreenJudge judge : judges) {
            for (Judgement best : judge.judgeGreen().best()) {
                long one = System.nanoTime();
                MapPoint beside = new MapPoint(
                        best.position().east() + 0.1, best.position().north() + 0.1);
                Judgement found = judge.judge(beside);
                double milliseconds = (System.nanoTime() - one) / 1e6;
                sum += milliseconds;
                slowest = Math.max(slowest, milliseconds);
                judged++;
                if (found.rules().size() != RuleId.values().length
                        || !judge.judge(best.position()).equals(best)) {
                    throw new IllegalStateException("a position disagrees with its green at " + best.position());
                }
            }
        }
        System.out.printf("%d positions: %.2f ms each, slowest %.1f ms%n", judged, sum / Math.max(1, judged), slowest);
    }
}
