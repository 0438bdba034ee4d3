package org.cupwright.app.field;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.cupwright.app.answers.PlaceText;
import org.cupwright.app.desk.turf.ShowTurf;
import org.cupwright.app.desk.turf.TurfReport;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.MapPoint;
import org.cupwright.policy.EnumNames;
import org.cupwright.turf.state.Plug;
import org.cupwright.turf.today.RecheckItem;
import org.cupwright.turf.today.RecheckItem.Reason;
import org.cupwright.turf.today.WateringItem;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Plugs of each green that want water or a look, for whoever passes by: few, as more are not looked at in a round. */
record CarriedPlugs(Texts texts, TurfReport report) {
    /** Of those that should have knit, the oldest of a green (our choice). */
    private static final int OLDEST = 2;

    /** What a plug asks for. */
    private record Wanted(Plug plug, boolean water, List<String> why) {
        Wanted and(boolean alsoWater, String reason) {
            return new Wanted(
                    plug, water || alsoWater, Stream.concat(why.stream(), Stream.of(reason)).toList());
        }
    }

    static CarriedPlugs of(Visit visit) {
        return new CarriedPlugs(visit.texts(), new ShowTurf(visit.session()).of(visit.question()));
    }

    /** The plugs of a green; and the place of the hole that is filled today, whose plug is new. */
    void into(ObjectNode green, String hole) {
        PlaceText places = new PlaceText(texts, report.day().course(), report.day().policy());
        ArrayNode plugs = green.putArray("plugs");
        for (Wanted wanted : wanted(hole)) {
            ObjectNode plug = plugs.addObject();
            plug.put("place", typed(wanted.plug().at()));
            plug.put("says", places.at(hole, wanted.plug().at()));
            plug.put("set", texts.say("turf.setOn", texts.day(wanted.plug().setOn())));
            plug.put("water", wanted.water());
            wanted.why().forEach(plug.putArray("why")::add);
        }
        report.turf()
                .state()
                .green(hole)
                .cup()
                .filter(cup -> cup.cutOn().isBefore(report.day().date()))
                .ifPresent(cup -> green.put("filledAt", typed(cup.at())));
    }

    private List<Wanted> wanted(String hole) {
        Map<MapPoint, Wanted> wanted = new LinkedHashMap<>();
        Stream.concat(report.morning().stream(), report.afternoon().stream())
                .filter(item -> item.hole().equals(hole) && !item.done())
                .forEach(item -> want(item.plug(), true, water(item), wanted));
        looks(hole).forEach(item -> want(item.plug(), false, look(item), wanted));
        return List.copyOf(wanted.values());
    }

    private static void want(Plug plug, boolean water, String why, Map<MapPoint, Wanted> wanted) {
        Wanted before = wanted.getOrDefault(plug.at(), new Wanted(plug, false, List.of()));
        wanted.put(plug.at(), before.and(water, why));
    }

    /** Those with a fault, the newest that nobody has seen, and the oldest of those that should have knit. */
    private List<RecheckItem> looks(String hole) {
        Comparator<RecheckItem> byAge = Comparator.comparing(item -> item.plug().setOn());
        List<RecheckItem> all = report.recheck().stream()
                .filter(item -> item.hole().equals(hole))
                .sorted(byAge)
                .toList();
        List<RecheckItem> looks = new ArrayList<>();
        all.stream().filter(item -> item.reason().isFault()).forEach(looks::add);
        all.stream()
                .filter(item -> item.reason() == Reason.NEVER_SEEN)
                .reduce((older, newer) -> newer)
                .ifPresent(looks::add);
        all.stream()
                .filter(item -> item.reason() == Reason.LOOK_FIRST)
                .limit(OLDEST)
                .forEach(looks::add);
        return looks;
    }

    private String water(WateringItem item) {
        return texts.say("turf.watering." + EnumNames.lowerCamel(item.reason()));
    }

    private String look(RecheckItem item) {
        String why = texts.say("round.plug." + EnumNames.lowerCamel(item.reason()));
        return item.washAfter() ? why + " " + texts.say("turf.wash") : why;
    }

    /** A place as entries are typed. */
    private static String typed(MapPoint at) {
        return String.format(Locale.ROOT, "%.3f,%.3f", at.east(), at.north());
    }
}
