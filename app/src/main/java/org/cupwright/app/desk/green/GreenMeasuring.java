package org.cupwright.app.desk.green;

import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.storage.ResultCache;
import org.cupwright.green.Green;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.holelocation.spot.GreenMeasurement;
import org.cupwright.holelocation.spot.MeasurementBytes;
import org.cupwright.policy.Policy;
import org.cupwright.units.GreenSpeed;

/**
 * Measures greens for a green speed, and remembers those that take long: the surveyed ones. What people say of the
 * ground is no part of a measurement: it is put to a remembered one as it is now.
 */
final class GreenMeasuring {
    private final ResultCache cache;
    private final GreenSpeed speed;
    private final Policy policy;

    GreenMeasuring(ResultCache cache, CourseDay day) {
        this.cache = cache;
        this.speed = day.fastest();
        this.policy = day.policy();
    }

    /** The green's measurement: some milliseconds when it is remembered, a second or two when not. */
    GreenMeasurement of(MeasuredGreen green) {
        if (green.survey().isEmpty()) {
            return GreenMeasurement.measure(green.green(policy), speed, policy);
        }
        String name = MeasurementName.of(green.hole(), green.points().get(), green.readings(), speed, policy);
        return cache.find(name)
                .flatMap(bytes -> MeasurementBytes.read(bytes, green.hole(), () -> again(green), speed, policy))
                .map(remembered -> remembered.withDrawn(green.drawn()))
                .orElseGet(() -> anew(green, name));
    }

    private GreenMeasurement anew(MeasuredGreen green, String name) {
        Green fitted = green.green(policy);
        GreenMeasurement measured = GreenMeasurement.measure(fitted, speed, policy);
        if (fitted.ground() instanceof SurveyedGround ground) { // a survey too thin to fit is not one
            cache.keep(name, MeasurementBytes.write(measured, ground));
        }
        return measured;
    }

    /** What was fitted once can be fitted again: the name holds everything the fit rests on. */
    private SurveyedGround again(MeasuredGreen green) {
        try {
            return green.fitted(policy);
        } catch (SurveyTooThin changed) {
            throw new IllegalStateException("a survey that was fitted cannot be fitted", changed);
        }
    }
}
