package org.cupwright.testing.trials;

import java.util.List;
import java.util.Locale;

/** What was counted, survey by survey: shares with their errors from the spread between surveys. */
public final class TrialCounts {
    /** What is counted. */
    public enum Of {
        SLOPES,
        SLOPES_HELD,
        SLOPES_AT_STEP,
        SLOPES_AT_STEP_HELD,
        CHANGES,
        CHANGES_HELD,
        CHANGES_AT_STEP,
        CHANGES_AT_STEP_HELD,
        WIDTH,
        WIDTH_AT_STEP,
        BLUNDERS,
        BLUNDERS_FOUND,
        SOUND,
        SOUND_LOST,
        STEPS_FOUND,
        SURVEYS
    }

    private final List<double[]> surveys;

    TrialCounts(List<double[]> surveys) {
        this.surveys = surveys;
    }

    /** A share and its standard error. */
    public record Share(double value, double error) {
        @Override
        public String toString() {
            return String.format(Locale.ROOT, "%.4f±%.4f", value, error);
        }
    }

    public Share share(Of part, Of whole) {
        double above = 0;
        double below = 0;
        for (double[] survey : surveys) {
            above += survey[part.ordinal()];
            below += survey[whole.ordinal()];
        }
        double ratio = above / below;
        double squares = 0;
        for (double[] survey : surveys) {
            squares += Math.pow(survey[part.ordinal()] - ratio * survey[whole.ordinal()], 2);
        }
        double count = Math.max(2, surveys.size());
        return new Share(ratio, Math.sqrt(squares * count / (count - 1)) / below);
    }

    /** Share of the intervals of a slope's components that hold the truth, spots at a step among them. */
    public Share slopesHeld() {
        return together(Of.SLOPES_HELD, Of.SLOPES_AT_STEP_HELD, Of.SLOPES, Of.SLOPES_AT_STEP);
    }

    /** The same of the greatest change of slope. */
    public Share changesHeld() {
        return together(Of.CHANGES_HELD, Of.CHANGES_AT_STEP_HELD, Of.CHANGES, Of.CHANGES_AT_STEP);
    }

    private Share together(Of part, Of other, Of whole, Of otherWhole) {
        List<double[]> sums = surveys.stream()
                .map(survey -> {
                    double[] both = survey.clone();
                    both[part.ordinal()] += survey[other.ordinal()];
                    both[whole.ordinal()] += survey[otherWhole.ordinal()];
                    return both;
                })
                .toList();
        return new TrialCounts(sums).share(part, whole);
    }

    @Override
    public String toString() {
        return String.format(
                "slope %s, away %s, at step %s; change %s, away %s, at step %s; width %s, at step %s; found %s; "
                        + "lost %s; step said %s",
                slopesHeld(),
                share(Of.SLOPES_HELD, Of.SLOPES),
                share(Of.SLOPES_AT_STEP_HELD, Of.SLOPES_AT_STEP),
                changesHeld(),
                share(Of.CHANGES_HELD, Of.CHANGES),
                share(Of.CHANGES_AT_STEP_HELD, Of.CHANGES_AT_STEP),
                share(Of.WIDTH, Of.SLOPES),
                share(Of.WIDTH_AT_STEP, Of.SLOPES_AT_STEP),
                share(Of.BLUNDERS_FOUND, Of.BLUNDERS),
                share(Of.SOUND_LOST, Of.SOUND),
                share(Of.STEPS_FOUND, Of.SURVEYS));
    }
}
