package org.cupwright.app.cli.command;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;
import org.cupwright.turf.weather.WeatherBasis;
import org.cupwright.turf.weather.WeatherSource;
import tools.jackson.databind.node.ObjectNode;

/** What weather rests on, in words and as scripts read it. */
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

    public static ObjectNode json(WeatherBasis basis) {
        ObjectNode node = Json.object();
        node.put("from", basis.first().toString());
        node.put("to", basis.last().toString());
        for (WeatherSource source : WeatherSource.values()) {
            node.put(EnumNames.lowerCamel(source), basis.days(source));
        }
        return node;
    }
}
