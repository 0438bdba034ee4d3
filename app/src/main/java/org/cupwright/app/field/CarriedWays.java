package org.cupwright.app.field;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.cupwright.app.desk.begin.UnknownPlaces;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.desk.plan.PaintedDots;
import org.cupwright.app.sheets.DaySheet;
import org.cupwright.app.sheets.SheetHole;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.CourseFrame;
import org.cupwright.units.UnitSystem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** What a day that is carried says of how its spots are found. */
record CarriedWays(Visit visit, DayPaper paper, DaySheet sheet) {
    /** Beside what the day says of its holes already. */
    void put(ObjectNode day) {
        day.put("paceMetres", sheet.paceMetres());
        day.put("feet", visit.session().speech().units() == UnitSystem.IMPERIAL);
        CourseDay of = paper.day();
        Set<String> unknown = visit.session().read(stores -> UnknownPlaces.of(stores, of.course()));
        Map<String, PaintedDots.Dot> dots = visit.session().read(stores -> PaintedDots.of(stores, of));
        Map<String, SheetHole> holes = sheet.holes().stream().collect(Collectors.toMap(SheetHole::hole, hole -> hole));
        for (JsonNode part : day.path("parts")) {
            for (JsonNode node : part.path("holes")) {
                String name = node.path("hole").asString();
                Optional<CourseFrame> frame =
                        Optional.of(of.course().frame()).filter(course -> !unknown.contains(name));
                new CarriedWay(holes.get(name), sheet, visit.texts())
                        .put((ObjectNode) node, Optional.ofNullable(dots.get(name)), frame);
            }
        }
    }
}
