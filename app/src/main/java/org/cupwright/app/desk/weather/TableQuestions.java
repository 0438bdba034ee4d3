package org.cupwright.app.desk.weather;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.cupwright.cupchange.DayReading.WeatherEntered;
import org.cupwright.formats.table.FarDays;
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
final class TableQuestions {
    static final String SEASONS = "seasons";
    private static final List<String> ABOUT = List.of("tmax", "rain", "wind", "sunshine", SEASONS, FarDays.ABOUT);

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

    /** Means of fewer days say little. */
    private static final int ENOUGH_DAYS = 10;

    private final Collection<WeatherEntered> days;
    private final List<TableQuestion> questions = new ArrayList<>();

    private TableQuestions(Collection<WeatherEntered> days) {
        this.days = days;
    }

    /** @throws Problem for a word that no question is about */
    static void checkAccepted(Set<String> accepted) {
        for (String word : accepted) {
            if (!ABOUT.contains(word)) {
                throw Problem.of("weather.accept", "accept", word, new Name(String.join(", ", ABOUT)));
            }
        }
    }

    /**
     * @param latitudeDegrees of the course, south negative
     */
    static List<TableQuestion> of(WeatherTable table, double latitudeDegrees) {
        TableQuestions asking = new TableQuestions(table.days());
        asking.temperature();
        asking.rain();
        asking.wind();
        asking.sunshine();
        asking.seasons(latitudeDegrees);
        return List.copyOf(asking.questions);
    }

    private void temperature() {
        DoubleStream highest = days.stream().mapToDouble(WeatherEntered::highestCelsius);
        double hottest = highest.max().orElse(0);
        double mean = mean(day -> (day.highestCelsius() + day.lowestCelsius()) / 2);
        if (hottest > HOTTEST_DAY_CELSIUS) {
            ask("tmax", "hotDay", new Measure(hottest, 1, "°C"));
        } else if (days.size() >= ENOUGH_DAYS && mean > HOTTEST_MEAN_CELSIUS) {
            ask("tmax", "hotMean", new Measure(mean, 1, "°C"));
        }
    }

    private void rain() {
        double[] wet = days.stream()
                .flatMapToDouble(day -> day.rainMillimetres().stream())
                .filter(rain -> rain > 0)
                .toArray();
        double wettest = DoubleStream.of(wet).max().orElse(0);
        double mean = DoubleStream.of(wet).average().orElse(0);
        if (wettest > WETTEST_DAY_MILLIMETRES) {
            ask("rain", "wetDay", new Measure(wettest, 0, "mm"));
        } else if (wet.length >= ENOUGH_DAYS && mean < LEAST_MEAN_RAIN_MILLIMETRES) {
            ask("rain", "dryMean", new Measure(mean, 2, "mm"));
        }
    }

    private void wind() {
        double[] winds = days.stream()
                .flatMapToDouble(day -> day.windMetresPerSecond().stream())
                .toArray();
        double windiest = DoubleStream.of(winds).max().orElse(0);
        double mean = DoubleStream.of(winds).average().orElse(0);
        if (windiest > WINDIEST_DAY_METRES_PER_SECOND) {
            ask("wind", "windyDay", new Measure(windiest, 1, "m/s"));
        } else if (winds.length >= ENOUGH_DAYS && mean > WINDIEST_MEAN_METRES_PER_SECOND) {
            ask("wind", "windyMean", new Measure(mean, 1, "m/s"));
        }
    }

    private void sunshine() {
        int[] minutes = days.stream()
                .flatMapToInt(day -> day.sunshineMinutes().stream())
                .toArray();
        int longest = Arrays.stream(minutes).max().orElse(0);
        if (minutes.length >= ENOUGH_DAYS && longest > 0 && longest <= LONGEST_SUN_HOURS) {
            ask("sunshine", "dark", new Measure(longest, 0, "min"));
        }
    }

    private void seasons(double latitudeDegrees) {
        WeatherSeries record = WeatherSeries.of(days.stream()
                .map(day -> WeatherDay.of(day.day(), day.highestCelsius(), day.lowestCelsius()))
                .toList());
        Optional<Seasons> seasons = Seasons.of(record).filter(found -> found.contradict(latitudeDegrees));
        seasons.ifPresent(found -> ask(
                SEASONS,
                latitudeDegrees < 0 ? "seasonsOfTheNorth" : "seasonsOfTheSouth",
                new Measure(found.middleCelsius(), 1, "°C"),
                new Measure(found.turnCelsius(), 1, "°C"),
                new Measure(Math.abs(latitudeDegrees), 1, "°")));
    }

    private double mean(ToDoubleFunction<WeatherEntered> value) {
        return days.stream().mapToDouble(value).average().orElse(0);
    }

    private void ask(String about, String question, Message.Argument... values) {
        questions.add(new TableQuestion(
                about, Message.of("weather.asks." + question, values), Message.of("weather.asks.try." + about)));
    }
}
