package org.cupwright.app.field;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.cupwright.app.answers.PlaceText;
import org.cupwright.app.desk.turf.ShowTurf;
import org.cupwright.app.desk.turf.TurfReport;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.MapPoint;
import org.cupwright.policy.EnumNames;
import org.cupwright.turf.today.RecheckItem;
import org.cupwright.turf.today.WateringItem;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The plugs of each green that want water or a look, in words, with their places as entries are typed. */
record CarriedPlugs(Texts texts, TurfReport report) {
    static CarriedPlugs of(Visit visit) {
        return new CarriedPlugs(visit.texts(), new ShowTurf(visit.session()).of(visit.question()));
    }

    /** The plugs of a green; and the place of the hole that is filled today, whose plug is new. */
    void into(ObjectNode green, String hole) {
        PlaceText places =
                new PlaceText(texts, report.day().course(), report.day().policy());
        ArrayNode plugs = green.putArray("plugs");
        for (PlugsInPassing.Wanted wanted : inPassing().on(hole)) {
            ObjectNode plug = plugs.addObject();
            plug.put("place", typed(wanted.plug().at()));
            plug.put("says", places.at(hole, wanted.plug().at()));
            plug.put("set", texts.say("turf.setOn", texts.day(wanted.plug().setOn())));
            plug.put("water", !wanted.water().isEmpty());
            why(wanted).forEach(plug.putArray("why")::add);
        }
        report.turf()
                .state()
                .green(hole)
                .cup()
                .filter(cup -> cup.cutOn().isBefore(report.day().date()))
                .ifPresent(cup -> green.put("filledAt", typed(cup.at())));
    }

    private PlugsInPassing inPassing() {
        List<WateringItem> watering = Stream.concat(report.morning().stream(), report.afternoon().stream())
                .toList();
        return new PlugsInPassing(watering, report.recheck());
    }

    private Stream<String> why(PlugsInPassing.Wanted wanted) {
        return Stream.concat(
                wanted.water().stream().map(reason -> texts.say("turf.watering." + EnumNames.lowerCamel(reason))),
                wanted.look().stream().map(this::look));
    }

    private String look(RecheckItem item) {
        String why = texts.say("round.plug." + EnumNames.lowerCamel(item.reason()));
        return item.washAfter() ? why + " " + texts.say("turf.wash") : why;
    }

    private static String typed(MapPoint at) {
        return String.format(Locale.ROOT, "%.3f,%.3f", at.east(), at.north());
    }
}
