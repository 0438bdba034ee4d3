package org.cupwright.app.answers;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.desk.log.OddThings;
import org.cupwright.app.desk.turf.TurfReport;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;
import org.cupwright.turf.signal.IndividualsChart;
import org.cupwright.turf.state.Measured;
import org.cupwright.turf.state.Plug;
import org.cupwright.turf.today.RecheckItem;
import org.cupwright.turf.today.RecheckItem.Reason;
import org.cupwright.turf.today.RestingHole;
import org.cupwright.turf.today.WateringItem;
import org.cupwright.turf.water.WaterStatus;

/** The turf of a day in words, sentence by sentence. */
public final class TurfText {
    private final Texts texts;
    private final TurfReport report;

    public TurfText(Texts texts, TurfReport report) {
        this.texts = texts;
        this.report = report;
    }

    public String title() {
        return texts.say(
                "turf.title",
                report.day().course().name(),
                texts.day(report.day().date()));
    }

    /** Growth, what that rests on, what the ground lacks of water, and what is to be kept off. */
    public List<String> conditions() {
        List<String> said = new ArrayList<>();
        String rests = texts.say("turf.weather." + EnumNames.lowerCamel(report.weather()));
        said.add(texts.say("turf.growth", texts.number(report.growth(), 2), rests));
        said.add(new WeatherText(texts).basis(report.basis()));
        report.water().ifPresentOrElse(water -> water(water, said), () -> said.add(texts.say("turf.noWater")));
        if (report.frost()) {
            said.add(texts.say("turf.frost"));
        }
        ZoneId zone = report.day().course().frame().zone();
        report.reentry().forEach((hole, from) -> said.add(texts.say("turf.reentry", hole, texts.moment(from, zone))));
        return said;
    }

    private void water(WaterStatus water, List<String> said) {
        water.loss().ifPresent(loss -> {
            String method = texts.say("turf.method." + EnumNames.lowerCamel(loss.method()));
            said.add(texts.say("turf.loss", millimetres(loss.etoMillimetres()), method));
        });
        String least = millimetres(water.deficitAtLeastMillimetres());
        String most = millimetres(water.deficitAtMostMillimetres());
        said.add(
                water.deficitMillimetres().isPresent()
                        ? texts.say("turf.deficit", most)
                        : texts.say("turf.deficitBetween", least, most, water.unknownDays()));
        if (water.filledDays() > 0) {
            said.add(texts.say("turf.filled", water.filledDays()));
        }
    }

    /** Something odd: how urgent, what, who saw it, and whether there is a photo. */
    public String odd(OddThings.Thing thing) {
        String severity = texts.say(
                "log.choice.severity." + EnumNames.lowerCamel(thing.odd().severity()));
        String photo = thing.odd().photo().isPresent() ? " " + texts.say("turf.odd.photo") : "";
        return severity + ": " + thing.odd().text() + " (" + thing.fact().person() + ")" + photo;
    }

    public String watering(WateringItem item) {
        String done = item.done() ? " " + texts.say("turf.done") : "";
        return setOn(item.plug()) + texts.say("turf.watering." + EnumNames.lowerCamel(item.reason())) + done;
    }

    /** What is wrong with a plug. */
    public String recheck(RecheckItem item) {
        String wash = item.washAfter() ? " " + texts.say("turf.wash") : "";
        return setOn(item.plug()) + texts.say("turf.recheck." + EnumNames.lowerCamel(item.reason())) + wash;
    }

    private String setOn(Plug plug) {
        return texts.say("turf.setOn", texts.day(plug.setOn())) + " · ";
    }

    /** How many plugs of a green nobody has looked at. */
    public String unseen(List<RecheckItem> items) {
        List<LocalDate> due = items.stream()
                .filter(item -> item.reason() == Reason.LOOK_FIRST)
                .map(item -> item.plug().setOn())
                .sorted()
                .toList();
        List<String> parts = new ArrayList<>();
        if (!due.isEmpty()) {
            parts.add(texts.say("turf.recheck.due", due.size(), texts.day(due.get(0))));
        }
        if (due.size() < items.size()) {
            parts.add(texts.say("turf.recheck.unseen", items.size() - due.size()));
        }
        return String.join(" · ", parts);
    }

    /** How many old holes of a green rest, and until when. */
    public String resting(List<RestingHole> holes) {
        LocalDate last = holes.stream()
                .map(resting -> resting.rests().lastDay())
                .max(LocalDate::compareTo)
                .orElseThrow();
        return texts.say("turf.restsUntil", holes.size(), texts.day(last));
    }

    public String chart(Measured.What what, IndividualsChart chart) {
        return texts.say(
                "turf.chart",
                texts.say("measure." + EnumNames.lowerCamel(what)),
                chart.values().size(),
                millimetres(chart.mean()),
                millimetres(chart.lowerLimit()),
                millimetres(chart.upperLimit()),
                chart.outside().size());
    }

    private String millimetres(double value) {
        return texts.number(value, 1);
    }
}
