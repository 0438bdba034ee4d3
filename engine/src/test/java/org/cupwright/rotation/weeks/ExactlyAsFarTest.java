package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.MadeGreens;
import org.junit.jupiter.api.Test;

/** A hole exactly as far from an old one as is wanted, in front of which nothing else lies. */
class ExactlyAsFarTest {
    /**
     * What a hole that costs nothing where it is costs beside an old one, that it is not vouched for apart.
     *
     * @param rest days from the day before the plan
     */
    private static double points(double metres, int rest) {
        PastHole past = new PastHole(
                new MapPoint(15, 0), MadeWeeks.FIRST.minusDays(2), Optional.of(MadeWeeks.FIRST.minusDays(1)));
        GreenWeeks green = new GreenWeeks(
                "1",
                List.of(MadeGreens.good(15, metres, DifficultyClass.MEDIUM)),
                List.of(past),
                Optional.empty(),
                MadeWeeks.clear(1));
        WeeksRequest request = MadeWeeks.request(1, MadeWeeks.rests(rest, 1), green);
        WeeksModel model = new WeeksModel(request, Policy.defaults());
        Choices choices = new Choices(model);
        choices.put(0, 0, 0);
        double points = choices.total() / 1000.0;
        assertThat(points).isCloseTo(Chosen.slow(request, model, choices, 200).points(), within(0.01));
        return points - nearYesterday(metres) - 20;
    }

    private static double nearYesterday(double metres) {
        return 20 * Math.max(0, 5 - metres) + Math.max(0, 10 - metres);
    }

    /** Care costs 45 points; without room it is 15 points, and five for each metre of 1.83 that is wanting. */
    @Test
    void offTheLastHolesItIsFarEnough() {
        double noRoom = 15 + 5 * 1.83;
        assertThat(points(4.88, 1)).isCloseTo(noRoom, within(0.01));
        assertThat(points(4.87, 1)).isCloseTo(45, within(0.01));
    }

    /** It does not lie on resting ground, and so asks for care as one of the last would have it. */
    @Test
    void offRestingGroundItIsFarEnough() {
        double noRoom = 15 + 5 * 1.83;
        assertThat(points(2.74, 5)).isCloseTo(45 + noRoom, within(0.01));
        assertThat(points(2.73, 5)).isGreaterThan(400);
    }

    private static boolean[] resting(double metres) {
        GreenWeeks green = MadeWeeks.green(
                "1",
                2,
                List.of(
                        MadeGreens.good(15, 0, DifficultyClass.MEDIUM),
                        MadeGreens.good(15, metres, DifficultyClass.MEDIUM)));
        WeeksModel model = new WeeksModel(MadeWeeks.request(2, MadeWeeks.rests(5, 1), green), Policy.defaults());
        Choices choices = new Choices(model);
        choices.put(0, 0, 0);
        choices.put(0, 1, 1);
        return new boolean[] {
            new RestingHoles(model).rests(choices, 0, 1),
            new Nearness(model, choices).tooNear(new Repair.Cell(0, 0), new Repair.Cell(0, 1))
        };
    }

    @Test
    void twoHolesOfAPlanDoNotKeepEachOtherFromTheirGround() {
        assertThat(resting(2.74)).containsOnly(false);
        assertThat(resting(2.73)).containsOnly(true);
    }
}
