package org.cupwright.app.desk.weather;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cupwright.cupchange.DayReading.WeatherEntered;
import org.cupwright.formats.table.FarDays;
import org.cupwright.formats.table.Question;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Measure;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.turf.weather.Seasons;
import org.cupwright.turf.weather.WeatherDay;
import org.cupwright.turf.weather.WeatherSeries;

/**
 * What looks wrong of a whole table: values that no golf course sees and another unit would explain, and a summer in
 * the wrong half of the year. The bounds are our choice; each is passed by hardly any place, and a question that is
 * wrong costs one word.
 */
final class WeatherQuestions {
    private static final String SEASONS = "seasons";

    /** What can be accepted, in the order in which it is asked. */
    static final List<String> ABOUT = List.of("tmax", "rain", "wind", "sunshine", "radiation", SEASONS, FarDays.ABOUT);

    private static final double HOTTEST_DAY_CELSIUS = 50;

    /** No place has such a mean over a year, and only deserts over a month. */
    private static final double HOTTEST_MEAN_CELSIUS = 36;

    private static final double WETTEST_DAY_MILLIMETRES = 300;

    /** Days with rain bring 5 mm and more in the mean nearly everywhere, and a quarter of an inch. */
    private static final double LEAST_MEAN_RAIN_MILLIMETRES = 1;

    /** The mean of a whole day: a storm that does not end. */
    private static final double WINDIEST_DAY_METRES_PER_SECOND = 20;

    /** The mean of many days: the windiest coasts have less. */
    private static final double WINDIEST_MEAN_METRES_PER_SECOND = 9;

    /** The sun is up longer than this, in minutes, on every day of a temperate year; in hours it never is. */
    private static final double LONGEST_SUN_HOURS = 24;

    /** The sun brings hardly more to any place on earth; in watts and langleys it is several times as much. */
    private static final double BRIGHTEST_DAY_MEGAJOULES = 40;

    /** Ten days of which the brightest has less than this are a polar winter, or kilowatt hours. */
    private static final double DULLEST_MOST_MEGAJOULES = 9;

    /** Means of fewer days say little. */
    private static final int ENOUGH_DAYS = 10;

    private WeatherQuestions() {}

    /** @throws Problem for a word that no question is about */
    static void checkAccepted(Set<String> accepted) {
        for (String word : accepted) {
            if (!ABOUT.contains(word)) {
                throw Problem.of("weather.accept", "accept", word, new Name(String.join(", ", ABOUT)));
            }
        }
    }

    /** What looks wrong of the days beside one another, their highest temperatures being right. */
    static List<Question> of(List<WeatherEntered> days, boolean hottestIsRight, double latitudeDegrees) {
        Optional<Question> mean = hottestIsRight ? hottestMean(days) : Optional.empty();
        return Stream.concat(mean.stream(), seasons(days, latitudeDegrees).stream())
                .toList();
    }

    static Optional<Question> hottest(List<Double> highest) {
        double hottest = most(highest);
        return hottest > HOTTEST_DAY_CELSIUS
                ? asked("tmax", "hotDay", new Measure(hottest, 1, "°C"))
                : Optional.empty();
    }

    private static Optional<Question> hottestMean(List<WeatherEntered> days) {
        double mean = mean(days.stream()
                .map(day -> (day.highestCelsius() + day.lowestCelsius()) / 2)
                .toList());
        return days.size() >= ENOUGH_DAYS && mean > HOTTEST_MEAN_CELSIUS
                ? asked("tmax", "hotMean", new Measure(mean, 1, "°C"))
                : Optional.empty();
    }

    static Optional<Question> rain(List<Double> days) {
        List<Double> wet = days.stream().filter(rain -> rain > 0).toList();
        if (most(wet) > WETTEST_DAY_MILLIMETRES) {
            return asked("rain", "wetDay", new Measure(most(wet), 0, "mm"));
        }
        return wet.size() >= ENOUGH_DAYS && mean(wet) < LEAST_MEAN_RAIN_MILLIMETRES
                ? asked("rain", "dryMean", new Measure(mean(wet), 2, "mm"))
                : Optional.empty();
    }

    static Optional<Question> wind(List<Double> winds) {
        if (most(winds) > WINDIEST_DAY_METRES_PER_SECOND) {
            return asked("wind", "windyDay", new Measure(most(winds), 1, "m/s"));
        }
        return winds.size() >= ENOUGH_DAYS && mean(winds) > WINDIEST_MEAN_METRES_PER_SECOND
                ? asked("wind", "windyMean", new Measure(mean(winds), 1, "m/s"))
                : Optional.empty();
    }

    static Optional<Question> sunshine(List<Double> minutes) {
        double longest = most(minutes);
        return minutes.size() >= ENOUGH_DAYS && longest > 0 && longest <= LONGEST_SUN_HOURS
                ? asked("sunshine", "dark", new Measure(longest, 0, "min"))
                : Optional.empty();
    }

    static Optional<Question> radiation(List<Double> megajoules) {
        double most = most(megajoules);
        if (most > BRIGHTEST_DAY_MEGAJOULES) {
            return asked("radiation", "bright", new Measure(most, 0, "MJ/m²"));
        }
        return megajoules.size() >= ENOUGH_DAYS && most < DULLEST_MOST_MEGAJOULES
                ? asked("radiation", "dull", new Measure(most, 1, "MJ/m²"))
                : Optional.empty();
    }

    /** @param latitudeDegrees of the course, south negative */
    private static Optional<Question> seasons(List<WeatherEntered> days, double latitudeDegrees) {
        WeatherSeries record = WeatherSeries.of(days.stream()
                .map(day -> WeatherDay.of(day.day(), day.highestCelsius(), day.lowestCelsius()))
                .toList());
        return Seasons.of(record)
                .filter(found -> found.contradict(latitudeDegrees))
                .flatMap(found -> asked(
                        SEASONS,
                        latitudeDegrees < 0 ? "seasonsOfTheNorth" : "seasonsOfTheSouth",
                        new Measure(found.middleCelsius(), 1, "°C"),
                        new Measure(found.turnCelsius(), 1, "°C"),
                        new Measure(Math.abs(latitudeDegrees), 1, "°")));
    }

    private static double most(List<Double> values) {
        return values.stream().mapToDouble(value -> value).max().orElse(0);
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(value -> value).average().orElse(0);
    }

    private static Optional<Question> asked(String about, String question, Message.Argument... values) {
        return Optional.of(new Question(
                about, Message.of("weather.asks." + question, values), Message.of("weather.asks.try." + about)));
    }
}
