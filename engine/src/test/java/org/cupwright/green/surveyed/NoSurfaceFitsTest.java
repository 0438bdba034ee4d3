package org.cupwright.green.surveyed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.cupwright.course.Outline;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.SurveyPoints;
import org.cupwright.policy.Policy;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** Heights whose squares are beyond all numbers leave normal equations that are not positive definite. */
class NoSurfaceFitsTest {
    private static final Outline GREEN = Shapes.circle(0, 0, 6);

    /** A sound invented survey in which one height is another. */
    private static SurveyPoints with(double height) {
        SurveyPoints sound =
                new MadeSurvey(MadeSurface.plane(0.02, -0.013), -8.5, -8.5, 8.5, 8.5, 8, 0.005, 11).points();
        double[] east = new double[sound.count()];
        double[] north = new double[sound.count()];
        double[] heights = new double[sound.count()];
        for (int i = 0; i < sound.count(); i++) {
            east[i] = sound.east(i);
            north[i] = sound.north(i);
            heights[i] = sound.heightMetres(i);
        }
        heights[sound.count() / 2] = height;
        return SurveyPoints.scattered(east, north, heights);
    }

    @Test
    void aHeightBeyondAllNumbersIsNoDefect() {
        for (double height : new double[] {1e160, -1e300, Double.MAX_VALUE}) {
            SurveyPoints points = with(height);
            SurveyTooThin told = catchThrowableOfType(
                    SurveyTooThin.class, () -> SurveyedGround.fit(GREEN, points, Policy.defaults()));
            assertThat(told).as("height " + height).isNotNull();
            assertThat(told.reason()).isEqualTo(SurveyTooThin.Reason.NO_FIT);
            assertThat(told.points()).isPositive();
        }
    }

    @Test
    void aHeightThatIsOnlyFarOffIsLeftOut() throws SurveyTooThin {
        assertThat(SurveyedGround.fit(GREEN, with(1e6), Policy.defaults()).blunders())
                .isNotEmpty();
    }
}
