package org.cupwright.turf.water;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.cupwright.policy.Policy;
import org.cupwright.turf.TurfPolicy;
import org.cupwright.turf.weather.KnownWeather;
import org.cupwright.turf.weather.Rain;
import org.cupwright.turf.weather.WeatherOutlook;
import org.cupwright.turf.weather.WeatherSource;

/**
 * How much water the ground of a green lacks, as a range: what is not known widens it, and is never taken as nothing.
 *
 * <p>The ground lacks nothing at 0 and never lacks more than the cap. A day on which nobody knows of rain or irrigation
 * may have filled the ground, or not: its lower bound falls to 0, its upper one grows by the day's loss. A known
 * soaking closes the range.
 */
public record WaterBalance(WeatherOutlook outlook, WeatherStation site, Policy policy) {
    /**
     * Before this many days nothing is remembered (our choice); the balance begins there anywhere between full and
     * empty.
     */
    public static final int DAYS_BACK = 60;

    /**
     * The ground on the morning of a day.
     *
     * @param irrigationMillimetres what a day's irrigation brought; empty when it was not entered
     */
    public WaterStatus onMorning(LocalDate day, Function<LocalDate, OptionalDouble> irrigationMillimetres) {
        double cap = policy.get(TurfPolicy.DEFICIT_CAP_MILLIMETRES);
        double least = 0;
        double most = cap;
        int filled = 0;
        int unknown = 0;
        for (LocalDate past = day.minusDays(DAYS_BACK); past.isBefore(day); past = past.plusDays(1)) {
            Optional<KnownWeather> known = outlook.find(past);
            double loss = known.map(weather -> loss(weather).etcMillimetres()).orElse(0.0);
            double lossAtMost = known.isPresent() ? loss : cap;
            Optional<Rain> rain = known.filter(weather -> weather.source() == WeatherSource.OBSERVED)
                    .flatMap(weather -> weather.weather().rain()); // what a forecast promised has not fallen
            OptionalDouble irrigation = irrigationMillimetres.apply(past);
            double came = rain.map(Rain::millimetres).orElse(0.0) + irrigation.orElse(0);
            boolean allKnown = rain.isPresent() && irrigation.isPresent();
            filled += known.filter(weather -> weather.source() == WeatherSource.FILLED)
                            .isPresent()
                    ? 1
                    : 0;
            unknown += allKnown ? 0 : 1;
            least = allKnown ? clamp(least + loss - came, cap) : 0;
            most = clamp(most + lossAtMost - came, cap);
        }
        return new WaterStatus(day, outlook.find(day).map(this::loss), least, most, filled, unknown);
    }

    private WaterLoss loss(KnownWeather known) {
        return WaterLoss.of(known.weather(), site, policy.get(TurfPolicy.CROP_COEFFICIENT));
    }

    private static double clamp(double deficit, double cap) {
        return Math.min(cap, Math.max(0, deficit));
    }
}
