package org.cupwright.app.field;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.answers.FirstText;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.desk.log.HolesCut;
import org.cupwright.app.desk.paper.ShowDay;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.maps.GreenMap;
import org.cupwright.app.session.Right;
import org.cupwright.app.sheets.CardWords;
import org.cupwright.app.sheets.DaySheet;
import org.cupwright.app.sheets.Flags;
import org.cupwright.app.sheets.ShedWords;
import org.cupwright.app.sheets.SheetHole;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.Loop;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A day as it is carried round: all that is needed with no connection, in words, in the order in which it is read. What
 * the card says and what the page says is said by the same hands ({@link CardWords}, {@link ShedWords}).
 */
record CarriedDay(Visit visit, Instant loadedAt) {
    ObjectNode of(ShowDay.Answer answer) {
        ObjectNode day = Json.object();
        day.put("date", answer.day().date().toString());
        day.put("title", visit.texts().day(answer.day().date()));
        day.put("course", answer.day().course().id());
        day.put("courseName", answer.day().course().name());
        day.put("loadedAt", loadedAt.toString());
        day.put("person", visit.session().person().name());
        day.put("mayRecord", visit.may(Right.RECORD));
        FirstText first = new FirstText(visit.texts(), answer.day());
        texts(
                day.putArray("first"),
                answer.first().before().stream().map(first::says).toList());
        day.set("training", new CarriedTraining(visit).of(answer.day().date()));
        ArrayNode parts = day.putArray("parts");
        answer.paper().ifPresent(paper -> planned(paper, answer.cut(), day, parts));
        return day;
    }

    private void planned(DayPaper paper, HolesCut cut, ObjectNode day, ArrayNode parts) {
        DaySheet sheet = DaySheet.of(paper, visit.texts()).inRoundOrder(visit.texts());
        day.put("state", sheet.state(visit.texts()));
        texts(day.putArray("flags"), new Flags(visit.texts(), sheet.policy()).load(sheet));
        ShedWords shed = new ShedWords(sheet, visit.texts());
        texts(day.putArray("ticks"), shed.ticks());
        texts(day.putArray("answers"), shed.answers());
        shed.ring().ifPresent(ring -> day.put("ring", ring));
        new CarriedWork(visit.texts(), sheet.policy()).into(day);
        texts(day.putArray("cautions"), shed.cautions());
        GroundOfRound ground = new GroundOfRound(paper, visit.texts());
        ground.day(day.putObject("ground"));
        CarriedPlugs plugs = CarriedPlugs.of(visit);
        for (Loop loop : sheet.blocks().all()) {
            ObjectNode part = parts.addObject();
            sheet.blocks().title(loop).ifPresent(title -> part.put("title", title));
            ArrayNode holes = part.putArray("holes");
            sheet.holes(loop).forEach(hole -> {
                ObjectNode green = holes.addObject();
                hole(hole, sheet, cut, ground, green);
                plugs.into(green, hole.hole());
            });
        }
        new CarriedWays(visit, paper, sheet).put(day);
        new CarriedOrder(sheet, visit.texts()).addTo(day);
    }

    private void hole(SheetHole hole, DaySheet sheet, HolesCut cut, GroundOfRound ground, ObjectNode out) {
        CardWords words = new CardWords(sheet, visit.texts());
        out.put("hole", hole.hole());
        out.put("where", words.where(hole));
        put(out, "paces", words.paces(hole));
        put(out, "flag", words.flag(hole));
        texts(out.putArray("beside"), words.beside(hole));
        put(out, "room", words.room(hole));
        out.put("plug", words.plug(hole));
        texts(out.putArray("warnings"), words.warnings(hole));
        texts(out.putArray("notices"), hole.notices());
        out.put("cutToday", hole.cut().isPresent() && !hole.temporary() && !hole.stays());
        put(
                out,
                "done",
                cut.find(hole.hole())
                        .map(was -> visit.texts().say("round.done", was.time().toString(), was.person())));
        GreenMap map = new GreenMap(visit.texts());
        out.put("map", map.picture(hole.drawing()));
        texts(out.putArray("key"), map.key(hole.drawing()));
        if (hole.cut().isPresent() && !hole.temporary()) {
            ground.hole(hole, out);
        }
    }

    private static void put(ObjectNode out, String name, Optional<String> text) {
        text.ifPresent(said -> out.put(name, said));
    }

    private static void texts(ArrayNode out, List<String> texts) {
        texts.forEach(out::add);
    }
}
