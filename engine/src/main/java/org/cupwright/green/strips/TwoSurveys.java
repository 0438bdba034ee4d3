package org.cupwright.green.strips;

import java.util.Arrays;
import org.cupwright.course.Outline;
import org.cupwright.green.KindGuess;
import org.cupwright.green.Sharing;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.spline.PointIndex;
import org.cupwright.green.strips.StripTold.Why;

/**
 * How much the points of a survey share of their errors, from an earlier survey of the same kind of ground that has not
 * changed: the two are strips of one ({@link StripMeasure}). Their levels may differ.
 */
public final class TwoSurveys {
    /** A point lies where one of the earlier survey does, up or down and along, m (our choice: files are rounded). */
    private static final double SAME_METRES = 0.002;

    /** Where more of the points than this were there already, a file came in twice (our choice). */
    private static final double SAME_SHARE = 0.5;

    private TwoSurveys() {}

    /**
     * Measures what is shared.
     *
     * @param green where slopes are compared
     * @param survey its points, those of one strip in the order in which they came
     * @param earlier those of the earlier survey, likewise
     * @param set what points of such a survey are set to share
     */
    public static StripTold tell(Outline green, SurveyPoints survey, SurveyPoints earlier, Sharing set) {
        if (!KindGuess.withKind(survey)
                .kind()
                .equals(KindGuess.withKind(earlier).kind())) {
            return StripTold.nothing(Why.OTHER_KIND);
        }
        if (repeats(survey, earlier)) {
            return StripTold.nothing(Why.SAME_POINTS);
        }
        return StripMeasure.of(green, together(survey, earlier), set);
    }

    /** Points that are the same are off by the same, and would show that nothing is shared. */
    private static boolean repeats(SurveyPoints survey, SurveyPoints earlier) {
        PointIndex index = new PointIndex(earlier);
        int same = 0;
        for (int i = 0; i < survey.count(); i++) {
            double height = survey.heightMetres(i);
            boolean[] found = new boolean[1];
            index.forEachWithin(
                    survey.east(i),
                    survey.north(i),
                    SAME_METRES,
                    (point, x, y) -> found[0] |= Math.abs(earlier.heightMetres(point) - height) <= SAME_METRES);
            same += found[0] ? 1 : 0;
        }
        return same > SAME_SHARE * survey.count();
    }

    /** The strips of the survey, or all of it as one, and the earlier one as one more. */
    private static SurveyPoints together(SurveyPoints survey, SurveyPoints earlier) {
        int[] strips = new int[survey.count() + earlier.count()];
        int most = 0;
        for (int i = 0; i < survey.count(); i++) {
            strips[i] = survey.hasStrips() ? survey.strip(i) : 0;
            most = Math.max(most, strips[i]);
        }
        Arrays.fill(strips, survey.count(), strips.length, most + 1);
        return survey.followedBy(earlier).inStrips(strips);
    }
}
