package org.cupwright.cupchange.check;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Correction;
import org.cupwright.cupchange.CrewNote;
import org.cupwright.cupchange.CupWork;
import org.cupwright.cupchange.DayReading;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Payload;
import org.cupwright.message.Message;

/**
 * Asks about facts that look wrong: a place off the green, inches typed as millimetres, a clock that runs ahead. What
 * can never be right is refused by the records themselves.
 */
public record FactCheck(Course course) {
    /** A hole less deep than this was hardly measured in millimetres (our choice: the rules ask for 101.6 mm). */
    private static final double SHALLOWEST_HOLE_MILLIMETRES = 50;

    /**
     * A cup's rim less far down than this was hardly measured in millimetres (our choice: the rules ask for 25.4 mm).
     */
    private static final double SHALLOWEST_CUP_MILLIMETRES = 8;

    /** Deeper than any cutter reaches (our choice). */
    private static final double DEEPEST_HOLE_MILLIMETRES = 300;

    /** Deeper than a rim that still holds the flagstick in place (our choice). */
    private static final double DEEPEST_CUP_MILLIMETRES = 100;

    /** Hotter days were hardly measured in °C (our choice). */
    private static final double HOTTEST_CELSIUS = 50;

    /** A windier day, in the mean, was hardly measured in m/s (our choice). */
    private static final double WINDIEST_METRES_PER_SECOND = 20;

    /** Drawn outlines are good to about a metre: nearer than this to the edge nothing is asked (our choice). */
    private static final double OUTLINE_ERROR_METRES = 1;

    /** How far ahead of its own recording a fact may have happened: clocks differ (our choice). */
    private static final Duration CLOCK_ERROR = Duration.ofMinutes(10);

    /** What to ask about a fact; empty when it looks right. */
    public List<Message> check(Fact fact) {
        List<Message> asks = new ArrayList<>();
        if (fact.happenedAt().isAfter(fact.recordedAtDevice().plus(CLOCK_ERROR))) {
            asks.add(Message.of("fact.happenedAfterRecorded"));
        }
        Optional<Hole> hole = fact.hole().flatMap(course::find);
        if (fact.hole().isPresent() && hole.isEmpty()) {
            asks.add(Message.of("fact.noSuchHole", new Message.Name(fact.hole().orElseThrow())));
        }
        Payload said = fact.payload() instanceof Correction correction
                ? correction.replacement().orElse(correction)
                : fact.payload();
        hole.ifPresent(known -> checkPlaces(known, said, asks));
        checkMeasures(said, asks);
        checkReadings(said, fact, asks);
        return asks;
    }

    private static void checkPlaces(Hole hole, Payload payload, List<Message> asks) {
        for (MapPoint place : Places.onGreen(payload)) {
            double off = hole.green().distanceToEdgeMetres(place);
            if (!hole.green().contains(place) && off > OUTLINE_ERROR_METRES) {
                asks.add(Message.of("fact.offTheGreen", new Message.Name(hole.id()), new Message.Length(off)));
            }
        }
    }

    private void checkReadings(Payload said, Fact fact, List<Message> asks) {
        LocalDate happened =
                LocalDate.ofInstant(fact.happenedAt(), course.frame().zone());
        if (said instanceof DayReading.RoundsPlayed played) {
            checkDay(played.day(), said, happened, asks);
        } else if (said instanceof DayReading.WeatherEntered weather) {
            checkDay(weather.day(), said, happened, asks);
            checkWeather(weather.highestCelsius(), weather.windMetresPerSecond(), asks);
        } else if (said instanceof DayReading.WeatherForecast forecast) {
            checkDay(forecast.day(), said, happened, asks);
            checkWeather(forecast.highestCelsius(), forecast.windMetresPerSecond(), asks);
        }
    }

    private static void checkMeasures(Payload payload, List<Message> asks) {
        if (payload instanceof CupWork.SpotCheck check) {
            checkDepth(
                    "holeDepth",
                    check.holeDepthMillimetres(),
                    SHALLOWEST_HOLE_MILLIMETRES,
                    DEEPEST_HOLE_MILLIMETRES,
                    asks);
            checkDepth(
                    "cupDepth", check.cupDepthMillimetres(), SHALLOWEST_CUP_MILLIMETRES, DEEPEST_CUP_MILLIMETRES, asks);
        } else if (payload instanceof CrewNote.StopSet stop) {
            checkDepth(
                    "stopDepth",
                    OptionalDouble.of(stop.depthMillimetres()),
                    SHALLOWEST_HOLE_MILLIMETRES,
                    DEEPEST_HOLE_MILLIMETRES,
                    asks);
        }
    }

    private static void checkDepth(
            String what, OptionalDouble millimetres, double least, double greatest, List<Message> asks) {
        if (millimetres.isEmpty() || (millimetres.getAsDouble() >= least && millimetres.getAsDouble() <= greatest)) {
            return;
        }
        double value = millimetres.getAsDouble();
        double asInches = value * 25.4;
        Message.Argument name = new Message.Translated("measure." + what);
        boolean inches = asInches >= least && asInches <= greatest;
        asks.add(
                inches
                        ? Message.of(
                                "fact.inchesForMillimetres",
                                name,
                                measure(value, "mm"),
                                measure(value, "in"),
                                new Message.Measure(asInches, 0, "mm"))
                        : Message.of("fact.unlikelyMeasure", name, measure(value, "mm")));
    }

    private static void checkDay(LocalDate about, Payload said, LocalDate happened, List<Message> asks) {
        boolean forecast = said instanceof DayReading.WeatherForecast;
        if (!forecast && about.isAfter(happened)) {
            asks.add(Message.of("fact.dayToCome", new Message.Day(about)));
        } else if (forecast && about.isBefore(happened)) {
            asks.add(Message.of("fact.dayIsOver", new Message.Day(about)));
        }
    }

    private static void checkWeather(double highestCelsius, OptionalDouble wind, List<Message> asks) {
        if (highestCelsius > HOTTEST_CELSIUS) {
            asks.add(Message.of(
                    "fact.fahrenheit",
                    measure(highestCelsius, "°C"),
                    new Message.Measure((highestCelsius - 32) * 5 / 9, 0, "°C")));
        }
        if (wind.isPresent() && wind.getAsDouble() > WINDIEST_METRES_PER_SECOND) {
            asks.add(Message.of("fact.windy", measure(wind.getAsDouble(), "m/s")));
        }
    }

    /** As it was typed. */
    private static Message.Measure measure(double value, String unit) {
        int decimals = value == Math.rint(value) ? 0 : value * 10 == Math.rint(value * 10) ? 1 : 2;
        return new Message.Measure(value, decimals, unit);
    }
}
