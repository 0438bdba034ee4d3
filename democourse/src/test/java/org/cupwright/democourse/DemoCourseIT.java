package org.cupwright.democourse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Green;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.Jet;
import org.cupwright.green.LevelReading;
import org.cupwright.green.OnConvention;
import org.cupwright.green.SurveyPoint;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.judging.GreenJudge;
import org.cupwright.holelocation.judging.GreenJudgement;
import org.cupwright.policy.Policy;
import org.cupwright.units.GreenSpeed;
import org.junit.jupiter.api.Test;

/** The invented greens have the characters they are made for. */
class DemoCourseIT {
    private static final DemoCourse DEMO = new DemoCourse(1);
    private static final Course COURSE = DEMO.course();

    private static Hole hole(String id) {
        return COURSE.find(id).orElseThrow();
    }

    private static double area(String id) {
        return hole(id).green().areaSquareMetres();
    }

    /** The true form at a place of the green: x to the right of its middle, y beyond it, along the line of play. */
    private static Jet jet(String id, double x, double y) {
        MapPoint at =
                GreenFrame.of(hole(id), OnConvention.ALONG_CHORD).orElseThrow().at(x, y);
        Jet jet = new Jet();
        DEMO.trueSurface(id).at(at.east(), at.north(), jet);
        return jet;
    }

    private static double slope(String id, double x, double y) {
        Jet jet = jet(id, x, y);
        return Math.hypot(jet.zx, jet.zy);
    }

    private static double height(String id, double x, double y) {
        return jet(id, x, y).z;
    }

    /** How far the middle stands above the mean of two places as far to either side, or before and behind. */
    private static double aboveMean(String id, double x, double y) {
        return height(id, 0, 0) - (height(id, x, y) + height(id, -x, -y)) / 2;
    }

    @Test
    void greensAreOfVeryDifferentSize() {
        assertThat(area("6")).as("very small").isCloseTo(320, within(20.0));
        assertThat(area("15")).as("very large").isGreaterThan(800);
        for (Hole hole : COURSE.holes()) {
            if (!Set.of("9", "15", "18").contains(hole.id())) {
                assertThat(area(hole.id())).as(hole.id()).isBetween(320.0, 750.0);
            }
        }
    }

    @Test
    void theDoubleGreenIsOneGreenWithOneSurvey() {
        assertThat(hole("9").green()).isEqualTo(hole("18").green());
        assertThat(DEMO.survey("9")).isEqualTo(DEMO.survey("18"));
        assertThat(hole("9").lineOfPlay()).isNotEqualTo(hole("18").lineOfPlay());
        assertThat(COURSE.sharingGreenWith(hole("9"))).containsExactly(hole("18"));
        assertThat(area("9")).isGreaterThan(1100);
    }

    @Test
    void theClubKnowsSomeGreensBetterThanOthers() {
        for (Hole hole : COURSE.holes()) {
            boolean outline = Set.of("10", "13").contains(hole.id());
            boolean levels = Set.of("14", "16").contains(hole.id());
            assertThat(DEMO.survey(hole.id()).size() > 3000).as(hole.id()).isEqualTo(!outline && !levels);
            assertThat(DEMO.survey(hole.id()).isEmpty()).as(hole.id()).isEqualTo(outline || levels);
            assertThat(DEMO.levelReadings(hole.id())).as(hole.id()).hasSize(levels ? 6 : 0);
        }
    }

    @Test
    void theGroundHasTheFormsThatTheGreensAreNamedAfter() {
        assertThat(height("2", 0, 5) - height("2", 0, -3)).as("two tiers").isGreaterThan(0.35);
        assertThat(aboveMean("3", 5, 0)).as("bowl, across").isLessThan(-0.02);
        assertThat(aboveMean("3", 0, 5)).as("bowl, along").isLessThan(-0.02);
        assertThat(aboveMean("4", 6, 0)).as("crown, across").isGreaterThan(0.04);
        assertThat(aboveMean("4", 0, 6)).as("crown, along").isGreaterThan(0.04);
        assertThat(slope("5", 0, -12)).as("false front").isGreaterThan(0.1);
        assertThat(slope("5", 0, 0)).as("behind it").isLessThan(0.02);
        assertThat(aboveMean("7", 6, 0)).as("spine, across").isGreaterThan(0.03);
        assertThat(slope("8", 0, 0)).as("tilted to a side").isGreaterThan(0.018);
        assertThat(aboveMean("17", 8, 0)).as("saddle, across").isLessThan(-0.03);
        assertThat(aboveMean("17", 0, 8)).as("saddle, along").isGreaterThan(0.02);
    }

    private static GreenJudgement judged(String id, double feet) {
        Policy policy = Policy.defaults();
        GroundOnDay clear = GroundOnDay.clear(DemoCourse.TODAY);
        DayConditions day = new DayConditions(new GreenSpeed(feet), false, false, clear);
        return new GreenJudge(new Green(hole(id), DemoGrounds.of(DEMO, hole(id), policy)), day, policy).judgeGreen();
    }

    @Test
    void theTwelfthRunsOutOfGroundAboveElevenAndAHalfFeet() {
        GreenJudgement usual = judged("12", 10);
        assertThat(usual.concessions()).isEmpty();
        assertThat(usual.shares().pass() + usual.shares().caution()).isGreaterThan(0.25);
        GreenJudgement fast = judged("12", 11.5);
        assertThat(fast.concessions()).isEmpty();
        assertThat(fast.candidates()).isNotEmpty();
        assertThat(judged("12", 12).concessions())
                .as("nothing without setting a rule aside")
                .isNotEmpty();
    }

    @Test
    void playersWalkOffEveryGreen() {
        for (Hole hole : COURSE.holes()) {
            List<MapPoint> track = hole.walkOffs().get(0).points();
            assertThat(hole.green().contains(track.get(0))).as(hole.id()).isTrue();
            assertThat(hole.green().contains(track.get(track.size() - 1)))
                    .as(hole.id())
                    .isFalse();
        }
    }

    /**
     * The digest was taken from the first run that satisfied the tests above; it moves only when the invented course is
     * changed.
     */
    @Test
    void theSameBytesOnEveryMachine() {
        assertThat(digest()).isEqualTo("b9ebabf37c07625795a1e122b69a6ecad81e9668fea289e91c869434a9a617cc");
    }

    private static String digest() {
        Digest digest = new Digest();
        for (Hole hole : COURSE.holes()) {
            digest.text(hole.id())
                    .geometry(hole.green().polygon())
                    .points(hole.lineOfPlay().orElseThrow().points())
                    .numbers(hole.par().orElseThrow(), hole.measuredMetres().orElseThrow());
            hole.hazards().forEach(hazard -> digest.text(hazard.kind().name()).geometry(hazard.area()));
            hole.tees().forEach(tee -> digest.text(tee.name()).geometry(tee.area()));
            hole.marks().forEach(mark -> digest.text(mark.kind() + mark.name()).points(List.of(mark.at())));
            hole.walkOffs().forEach(track -> digest.points(track.points()));
            for (SurveyPoint point : DEMO.survey(hole.id())) {
                digest.numbers(point.east(), point.north(), point.heightMetres());
            }
            for (LevelReading reading : DEMO.levelReadings(hole.id())) {
                digest.points(List.of(reading.place()))
                        .numbers(reading.gradientEast(), reading.gradientNorth(), reading.standardError());
            }
        }
        return digest.hex();
    }
}
