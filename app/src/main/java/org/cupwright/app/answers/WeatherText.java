package org.cupwright.app.answers;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;
import org.cupwright.turf.weather.WeatherBasis;

/** What weather rests on, in words. */
public final class WeatherText {
    private final Texts texts;

    public WeatherText(Texts texts) {
        this.texts = texts;
    }

    /** How many days of a stretch rest on what. */
    public String basis(WeatherBasis basis) {
        return texts.say("weather.basis", basis.all(), texts.day(basis.last()), counts(basis));
    }

    /** The same without the stretch. */
    public String counts(WeatherBasis basis) {
        List<String> parts = new ArrayList<>();
        basis.days().forEach((source, days) -> {
            if (days > 0) {
                parts.add(texts.say("weather.days." + EnumNames.lowerCamel(source), days));
            }
        });
        return String.join(", ", parts);
    }
}
