package org.cupwright.green.strips;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.cupwright.course.Outline;
import org.cupwright.green.SharedAmplitude;
import org.cupwright.green.Sharing;
import org.cupwright.green.SurveyKind;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.strips.StripTold.Why;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** What a survey and an earlier one tell, on an invented green of 16 by 16 m, 12 points/m² a survey, 4 mm of noise. */
class TwoSurveysTest {
    private static final Outline GREEN = Shapes.rectangle(-8, -8, 8, 8);
    private static final Sharing SET = new Sharing(0.008, 3, false);

    /** @param shift by how much this survey's waves are displaced */
    private static SurveyPoints survey(long seed, double wave, double shift, double level) {
        Random random = new Random(seed);
        int count = 12 * 18 * 18;
        double[][] xyz = new double[3][count];
        for (int i = 0; i < count; i++) {
            double x = 18 * random.nextDouble() - 9;
            double y = 18 * random.nextDouble() - 9;
            xyz[0][i] = x;
            xyz[1][i] = y;
            xyz[2][i] = level
                    + 0.02 * x
                    + 0.003 * (x * x + y * y)
                    + wave * Math.sin(x / 3 + shift) * Math.cos(y / 3 - shift)
                    + 0.004 * random.nextGaussian();
        }
        return SurveyPoints.scattered(xyz[0], xyz[1], xyz[2]).as(SurveyKind.DRONE);
    }

    private static SharedAmplitude told(SurveyPoints survey, SurveyPoints earlier) {
        return TwoSurveys.tell(GREEN, survey, earlier, SET).measured().orElseThrow();
    }

    @Test
    void surveysThatAgreeShowThatLittleIsShared() {
        SharedAmplitude told = told(survey(1, 0, 0, 90), survey(2, 0, 0, 90));
        assertThat(told.sigmaMetres()).isLessThan(0.002);
    }

    @Test
    void surveysThatWaveEachItsOwnWayShowHowMuchWhateverTheirLevels() {
        SharedAmplitude level = told(survey(1, 0.008, 0, 90), survey(2, 0.008, 2, 90));
        SharedAmplitude higher = told(survey(1, 0.008, 0, 90), survey(2, 0.008, 2, 91));
        assertThat(level.sigmaMetres()).isBetween(0.002, 0.008); // a product of waves has half its size
        assertThat(higher.sigmaMetres()).isCloseTo(level.sigmaMetres(), within(1e-9));
    }

    @Test
    void aSurveyWithStripsOfItsOwnIsComparedStripByStrip() {
        SurveyPoints earlier = survey(2, 0.008, 2, 90);
        SurveyPoints both = survey(1, 0.008, 0, 90).followedBy(survey(3, 0.008, 4, 90));
        int[] strips = IntStream.range(0, both.count())
                .map(i -> i < both.count() / 2 ? 5 : SurveyPoints.NO_STRIP)
                .toArray();
        SurveyPoints partly = both.as(SurveyKind.DRONE).inStrips(strips);
        double first = told(survey(1, 0.008, 0, 90), earlier).sigmaMetres();
        assertThat(told(partly, earlier).sigmaMetres()).isCloseTo(first, within(0.01 * first)); // discs lie elsewhere
    }

    @Test
    void pointsThatWereThereAlreadyTellNothing() {
        SurveyPoints survey = survey(1, 0.008, 0, 90);
        assertThat(TwoSurveys.tell(GREEN, survey, survey.where(i -> true), SET).why())
                .isEqualTo(Why.SAME_POINTS);
        SurveyPoints mostly =
                survey.where(i -> i % 5 < 3).followedBy(survey(2, 0.008, 2, 90).where(i -> i % 5 < 2));
        assertThat(TwoSurveys.tell(GREEN, mostly.as(SurveyKind.DRONE), survey, SET)
                        .why())
                .isEqualTo(Why.SAME_POINTS);
        SurveyPoints fewer =
                survey.where(i -> i % 5 < 2).followedBy(survey(2, 0.008, 2, 90).where(i -> i % 5 < 3));
        assertThat(TwoSurveys.tell(GREEN, fewer.as(SurveyKind.DRONE), survey, SET)
                        .why())
                .isEqualTo(Why.MEASURED);
    }

    @Test
    void aSurveyOfAnotherKindTellsNothing() {
        SurveyPoints earlier = survey(2, 0.008, 2, 90).as(SurveyKind.SCAN);
        assertThat(TwoSurveys.tell(GREEN, survey(1, 0.008, 0, 90), earlier, SET).why())
                .isEqualTo(Why.OTHER_KIND);
    }

    @Test
    void surveysOfDifferentPartsTellNothing() {
        SurveyPoints survey = survey(1, 0.008, 0, 90);
        SurveyPoints west = survey.where(i -> survey.east(i) < 0);
        SurveyPoints other = survey(2, 0.008, 2, 90);
        SurveyPoints east = other.where(i -> other.east(i) > 1);
        assertThat(TwoSurveys.tell(GREEN, west, east, SET).why()).isEqualTo(Why.LITTLE_OVERLAP);
    }
}
