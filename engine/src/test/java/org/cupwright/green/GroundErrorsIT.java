package org.cupwright.green;

import static org.cupwright.testing.study.GroundClass.GENTLE;
import static org.cupwright.testing.study.GroundClass.LIVELY;
import static org.cupwright.testing.study.GroundClass.MICRO;
import static org.cupwright.testing.study.GroundClass.PRIOR;
import static org.cupwright.testing.study.GroundClass.TIER;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.assertj.core.api.SoftAssertions;
import org.cupwright.testing.Suite;
import org.cupwright.testing.study.ErrorStudy;
import org.cupwright.testing.study.GroundClass;
import org.cupwright.testing.study.StudySums;
import org.cupwright.testing.study.StudySums.Figure;
import org.junit.jupiter.api.Test;

/**
 * Whether the errors of fitted ground are honest: how often 95 % intervals hold the truth, how wide they are, what is
 * systematically wrong, and how often even ground is judged wrongly, on invented ground whose truth is known, for noise
 * and densities from careful ground surveys to airborne ones. Limits are our own choice; docs/ground-errors.md has the
 * table.
 *
 * <p>Surveys, not spots, are the sample: a figure is held to its limit with two of its own errors at the full count,
 * and with four at a reduced one, where that error is itself badly known.
 */
class GroundErrorsIT {
    private static final double[] SIGMAS = {0.005, 0.010, 0.025};
    private static final double[] DENSITIES = {4, 8, 25};
    private static final int FULL = 200;

    private final SoftAssertions all = new SoftAssertions();
    private final int surveys = Suite.count("errors of fitted ground, surveys a case", FULL, 3);
    private final double errors = surveys >= FULL ? 2 : 4;

    /** A bit above the figure's own error, so that a case without any spread is not held to the last digit. */
    private double room(Figure figure) {
        return errors * figure.error() + (surveys >= FULL ? 0 : 0.01);
    }

    private void atLeast(String label, Figure figure, double limit) {
        all.assertThat(figure.value()).as(label + " " + figure).isGreaterThanOrEqualTo(limit - room(figure));
    }

    private void atMost(String label, Figure figure, double limit) {
        all.assertThat(figure.value()).as(label + " " + figure).isLessThanOrEqualTo(limit + room(figure));
    }

    private void inEveryCase(List<GroundClass> classes, Check check) {
        for (double sigma : SIGMAS) {
            for (double density : DENSITIES) {
                Map<GroundClass, StudySums> studies = new EnumMap<>(GroundClass.class);
                for (GroundClass ground : classes) {
                    studies.put(ground, new ErrorStudy(ground, sigma, density).run(Suite.seed(), surveys));
                }
                String label = String.format(
                        Locale.ROOT,
                        "%s, %.0f mm, %.0f points/m², seed %d:",
                        classes,
                        1000 * sigma,
                        density,
                        Suite.seed());
                check.of(label, sigma, density, new Studies(studies));
            }
        }
        all.assertAll();
    }

    private interface Check {
        void of(String label, double sigma, double density, Studies studies);
    }

    /** The studies of one noise and density, by kind of ground. */
    private record Studies(Map<GroundClass, StudySums> byKind) {
        /** All kinds as one, spots beside a step apart. */
        StudySums.Group group(boolean atStep) {
            return StudySums.together(List.copyOf(byKind.values())).group(atStep);
        }
    }

    /**
     * Smooth ground is gentle ground and lively ground in equal parts (our choice: alone, the one is too easy and the
     * other too hard). What must never go wrong is asked of each by itself besides.
     */
    @Test
    void onSmoothGroundErrorsAreAsSmallAsTheySay() {
        inEveryCase(List.of(GENTLE, LIVELY), (label, sigma, density, sums) -> {
            StudySums.Group group = sums.group(false);
            atLeast(label + " coverage", group.coverage(), 0.93);
            atMost(label + " coverage", group.coverage(), 0.997);
            atLeast(label + " bends", group.bendCoverage(), 0.90);
            atMost(label + " width", group.widthAgainstRawPlane(), sigma >= 0.01 && density <= 8 ? 0.55 : 0.80);
            systematic(label, sigma, group);
            sums.byKind().forEach((kind, study) -> judgedRightly(label + " " + kind, study.group(false)));
        });
    }

    private void judgedRightly(String label, StudySums.Group group) {
        atLeast(label + " coverage", group.coverage(), 0.93);
        atLeast(label + " bends", group.bendCoverage(), 0.90);
        atMost(label + " width", group.widthAgainstRawPlane(), 0.80);
        all.assertThat(group.evenGroundFailed().value())
                .as(label + " even ground failed")
                .isZero();
        if (group.unevenPositions() > 0) {
            atMost(label + " uneven ground passed", group.unevenGroundPassed(), 0.02);
        }
    }

    private void systematic(String label, double sigma, StudySums.Group group) {
        atMost(label + " systematic", group.systematicPoints(), sigma > 0.01 ? 0.10 : 0.05);
        atLeast(label + " along the fall line", group.fallLineErrorPoints(), -0.03);
        atMost(label + " along the fall line", group.fallLineErrorPoints(), 0.03);
    }

    /**
     * Micro relief is finer than the knots: the change of slope it makes is seen in the residuals only, and what it
     * adds to the slope over a disc (0.05 points) no fit on these knots follows.
     */
    @Test
    void onMicroReliefIntervalsHoldTheTruth() {
        inEveryCase(List.of(MICRO), (label, sigma, density, sums) -> {
            StudySums.Group group = sums.group(false);
            atMost(label + " systematic", group.systematicPoints(), sigma > 0.01 ? 0.10 : 0.08);
            atLeast(label + " coverage", group.coverage(), 0.93);
            atLeast(label + " bends", group.bendCoverage(), 0.90);
            atLeast(label + " along the fall line", group.fallLineErrorPoints(), -0.03);
            atMost(label + " along the fall line", group.fallLineErrorPoints(), 0.03);
        });
    }

    @Test
    void whereTheDiscTouchesATierAndBesideItIntervalsHoldTheTruth() {
        inEveryCase(List.of(TIER), (label, sigma, density, sums) -> {
            for (boolean atStep : new boolean[] {false, true}) {
                StudySums.Group group = sums.group(atStep);
                String where = label + (atStep ? " at the tier" : " beside it");
                atLeast(where + " coverage", group.coverage(), 0.93);
                atLeast(where + " bends", group.bendCoverage(), 0.90);
                atMost(where + " width", group.widthAgainstRawPlane(), 1.0);
            }
            systematic(label, sigma, sums.group(false));
        });
    }

    @Test
    void onGroundAsTheSplineTakesItToBeIntervalsHoldTheTruth() {
        inEveryCase(List.of(PRIOR), (label, sigma, density, sums) -> {
            atLeast(label + " coverage", sums.group(false).coverage(), 0.92);
            atLeast(label + " bends", sums.group(false).bendCoverage(), 0.90);
        });
    }
}
