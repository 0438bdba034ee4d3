package org.cupwright.app.answers.json;

import org.cupwright.policy.EnumNames;
import org.cupwright.turf.weather.WeatherBasis;
import org.cupwright.turf.weather.WeatherSource;
import tools.jackson.databind.node.ObjectNode;

/** What weather rests on, as scripts read it. */
public final class WeatherJson {
    private WeatherJson() {}

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
