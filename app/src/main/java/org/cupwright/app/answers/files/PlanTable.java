package org.cupwright.app.answers.files;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.cupwright.app.answers.PositionText;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.desk.paper.WeeksPaper;
import org.cupwright.app.desk.paper.WeeksPaper.PlanOfDay;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.formats.table.CellText;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.green.PlacePolicy;
import org.cupwright.green.Side;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.RuleId;
import org.cupwright.policy.EnumNames;
import org.cupwright.units.Paces;

/**
 * Plans as a table: a line for each hole of each day. Numbers are those of the JSON; what people wrote is guarded as
 * in every table.
 */
public record PlanTable(Texts texts) {
    private static final List<String> HEADER = List.of(
            "course",
            "date",
            "state",
            "hole",
            "words",
            "third",
            "lateral",
            "onPaces",
            "side",
            "sidePaces",
            "onMetres",
            "sideMetres",
            "eastMetres",
            "northMetres",
            "epsg",
            "verdict",
            "goodWithinPaces",
            "setAside",
            "askedBy",
            "staysSince",
            "area");

    /** Its lines, the first with the names of the columns. */
    public List<List<String>> of(WeeksPaper paper) {
        List<List<String>> lines = new ArrayList<>(List.of(HEADER));
        for (PlanOfDay day : paper.days()) {
            day.plan().holes().forEach(hole -> lines.add(line(hole, day, paper)));
        }
        return lines;
    }

    private List<String> line(StoredHole hole, PlanOfDay day, WeeksPaper paper) {
        double pace = paper.policy().get(PlacePolicy.PACE_METRES);
        Judgement judgement = hole.position().judgement();
        Optional<PlaceOnGreen> place = hole.position().place();
        MapPoint at = judgement.position();
        OptionalDouble within = hole.position().goodWithinMetres();
        List<String> cells = new ArrayList<>(List.of(
                paper.course().id(),
                day.date().toString(),
                EnumNames.lowerCamel(day.plan().state()),
                CellText.guarded(hole.hole()),
                CellText.guarded(new PositionText(texts, pace).of(hole.position()))));
        cells.addAll(place(place, pace));
        cells.addAll(List.of(
                number(at.east()),
                number(at.north()),
                Integer.toString(paper.course().frame().epsg()),
                EnumNames.lowerCamel(judgement.verdict()),
                within.isPresent() ? number(Paces.roundedDownToHalf(within.getAsDouble(), pace)) : "",
                judgement.setAside().stream().map(RuleId::id).collect(Collectors.joining(" ")),
                hole.askedBy().map(CellText::guarded).orElse(""),
                hole.since().map(LocalDate::toString).orElse(""),
                hole.area().orElse("")));
        return cells;
    }

    /** Empty on a green without a line of play. */
    private static List<String> place(Optional<PlaceOnGreen> place, double pace) {
        List<Function<PlaceOnGreen, String>> parts = List.of(
                on -> EnumNames.lowerCamel(on.third()),
                on -> EnumNames.lowerCamel(on.lateral()),
                on -> number(Paces.roundedToHalf(on.onMetres(), pace)),
                on -> on.side() == Side.LEFT ? "L" : "R",
                on -> number(Paces.roundedToHalf(on.sideMetres(), pace)),
                on -> number(on.onMetres()),
                on -> number(on.sideMetres()));
        return parts.stream().map(part -> place.map(part).orElse("")).toList();
    }

    private static String number(double value) {
        return Json.number(value).asString();
    }
}
