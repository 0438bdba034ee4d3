package org.cupwright.turf.growth;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.cupwright.turf.GrassKind;
import org.cupwright.turf.weather.KnownWeather;
import org.cupwright.turf.weather.WeatherOutlook;
import org.cupwright.turf.weather.WeatherSource;

/** Growth potential day by day, and what each day's rests on. Immutable. */
public final class GrowthSeries {
    /**
     * Growth on a day of which nothing is known: just enough for the clocks to run at their calendar length (our
     * choice).
     */
    public static final double ASSUMED_GROWTH = 0.5;

    private final LocalDate first;
    private final double[] sumBefore;
    private final WeatherSource[] sources;

    private GrowthSeries(LocalDate first, double[] sumBefore, WeatherSource[] sources) {
        this.first = first;
        this.sumBefore = sumBefore;
        this.sources = sources;
    }

    /**
     * @param from the first day that will be asked for
     * @param to the last day that will be asked for
     */
    public static GrowthSeries over(WeatherOutlook outlook, GrassKind grass, LocalDate from, LocalDate to) {
        int days = Math.toIntExact(ChronoUnit.DAYS.between(from, to)) + 1;
        double[] sumBefore = new double[days + 1];
        WeatherSource[] sources = new WeatherSource[days];
        for (int i = 0; i < days; i++) {
            KnownWeather known = outlook.find(from.plusDays(i)).orElse(null);
            sources[i] = known == null ? WeatherSource.ASSUMED : known.source();
            double growth = known == null
                    ? ASSUMED_GROWTH
                    : GrowthPotential.of(grass, known.weather().meanCelsius());
            sumBefore[i + 1] = sumBefore[i] + growth;
        }
        return new GrowthSeries(from, sumBefore, sources);
    }

    /** Whether the series begins on a day or before it. */
    public boolean reachesBackTo(LocalDate day) {
        return !day.isBefore(first);
    }

    public double on(LocalDate day) {
        return sum(day, day.plusDays(1));
    }

    /** Sum of the daily growth from one day (included) to another (not included): days of full growth. */
    public double sum(LocalDate from, LocalDate before) {
        return sumBefore[index(before)] - sumBefore[index(from)];
    }

    /** What the weakest day from one (included) to another (not included) rests on. */
    public WeatherSource weakest(LocalDate from, LocalDate before) {
        WeatherSource weakest = WeatherSource.OBSERVED;
        for (int i = index(from); i < index(before); i++) {
            weakest = weakest.weaker(sources[i]);
        }
        return weakest;
    }

    /** How many of those days have that source. */
    public int days(WeatherSource source, LocalDate from, LocalDate before) {
        int days = 0;
        for (int i = index(from); i < index(before); i++) {
            days += sources[i] == source ? 1 : 0;
        }
        return days;
    }

    private int index(LocalDate day) {
        long index = ChronoUnit.DAYS.between(first, day);
        if (index < 0 || index >= sumBefore.length) {
            throw new IllegalArgumentException("growth on " + day + " was not asked for: the series runs from " + first
                    + " for " + sources.length + " days");
        }
        return (int) index;
    }
}
