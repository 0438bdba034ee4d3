package org.cupwright.benchmarks;

import java.util.Locale;
import org.cupwright.testing.study.ErrorStudy;
import org.cupwright.testing.study.GroundClass;
import org.cupwright.testing.study.StudySums;
import org.cupwright.testing.study.StudySums.Figure;

/**
 * Measures how honest the errors of fitted ground are, on invented ground whose truth is known, and prints the table of
 * docs/ground-errors.md. Every figure has its own error from the spread between surveys. Stops when an interval holds
 * the truth less often than it is let (our choice: 0.90).
 *
 * <p>{@code benchmarks/run GroundErrors} takes 200 surveys a case, some ten minutes on two free cores; for a quick look
 * {@code JAVA_TOOL_OPTIONS=-Dcupwright.surveys=10 benchmarks/run GroundErrors}.
 */
public final class GroundErrors {
    private static final double[] SIGMAS = {0.005, 0.010, 0.025};
    private static final double[] DENSITIES = {4, 8, 25};
    private static final double LEAST_COVERAGE = 0.90;

    private GroundErrors() {}

    public static void main(String[] arguments) {
        int surveys = Integer.getInteger("cupwright.surveys", 200);
        long seed = Long.getLong("cupwright.seed", 1L);
        System.out.println(surveys + " surveys a case, seed " + seed);
        System.out.println();
        System.out.println(
                "| ground | σ mm | points/m² | holds slope | standard error | actual error | against raw plane |"
                        + " fall line | systematic | holds change | even failed | uneven passed |");
        System.out.println("|---|---|---|---|---|---|---|---|---|---|---|---|");
        for (GroundClass ground : GroundClass.values()) {
            for (double sigma : SIGMAS) {
                for (double density : DENSITIES) {
                    StudySums sums = new ErrorStudy(ground, sigma, density).run(seed, surveys);
                    row(name(ground, false), sigma, density, sums.group(false));
                    if (ground == GroundClass.TIER) {
                        row(name(ground, true), sigma, density, sums.group(true));
                    }
                }
            }
        }
    }

    private static String name(GroundClass ground, boolean atStep) {
        String name = ground.name().toLowerCase(Locale.ROOT);
        if (ground != GroundClass.TIER) {
            return name;
        }
        return atStep ? "tier, disc touches it" : "tier, beside it";
    }

    private static void row(String name, double sigma, double density, StudySums.Group group) {
        System.out.println(String.join(
                " | ",
                "| " + name,
                String.format(Locale.ROOT, "%.0f", 1000 * sigma),
                String.format(Locale.ROOT, "%.0f", density),
                text(group.coverage(), 3),
                text(group.standardErrorPoints(), 2),
                text(group.rootMeanSquarePoints(), 2),
                text(group.widthAgainstRawPlane(), 2),
                text(group.fallLineErrorPoints(), 3),
                text(group.systematicPoints(), 3),
                text(group.bendCoverage(), 3),
                text(group.evenGroundFailed(), 4),
                text(group.unevenGroundPassed(), 3) + " |"));
        if (!(group.coverage().value() > LEAST_COVERAGE)) {
            throw new IllegalStateException(name + ": intervals hold " + group.coverage());
        }
    }

    private static String text(Figure figure, int digits) {
        String form = "%." + digits + "f ± %." + digits + "f";
        return Double.isNaN(figure.value()) ? "–" : String.format(Locale.ROOT, form, figure.value(), figure.error());
    }
}
