package org.cupwright.app.office.green;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cupwright.app.answers.FactText;
import org.cupwright.app.answers.PositionText;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.entry.Entry;
import org.cupwright.app.desk.entry.RecordFact;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.entry.typed.EntryPlace;
import org.cupwright.app.desk.entry.typed.TypedEntry;
import org.cupwright.app.desk.green.GreenPlaces;
import org.cupwright.app.desk.level.Falls;
import org.cupwright.app.desk.level.KeepLevelReading;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.app.maps.GreenMap;
import org.cupwright.app.maps.MapFrame;
import org.cupwright.app.session.Session;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlacePolicy;
import org.cupwright.message.Problem;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What is said of a green's ground: closed, saved or freed again; and what the level read. */
@Controller
public final class GroundController {
    private static final String MARKED = "groundMarked";
    private static final String FREE = "free";

    /**
     * Ground as it is marked.
     *
     * @param use how it may be used, by its name in the logbook
     * @param reason why
     * @param from the first day it counts
     * @param until the last; empty: until somebody frees it
     * @param corners its corners on the picture, {@code x,y} each and blanks between; empty: ground about a spot
     * @param at the spot, {@code E,N}
     * @param within how far about it, in the units of the course
     * @param sure whether it is meant though it looks wrong
     */
    record Marked(
            String use,
            String reason,
            String from,
            String until,
            String corners,
            String at,
            String within,
            Boolean sure) {
        Marked {
            use = Objects.requireNonNullElse(use, "");
            reason = Objects.requireNonNullElse(reason, "");
            from = Objects.requireNonNullElse(from, "");
            until = Objects.requireNonNullElse(until, "");
            corners = Objects.requireNonNullElse(corners, "");
            at = Objects.requireNonNullElse(at, "");
        }

        boolean drawn() {
            return !corners.isBlank();
        }
    }

    /**
     * Ground that looks wrong as it is marked, and may be right.
     *
     * @param says the question, in words
     * @param marked what was sent
     */
    record Doubted(String says, Marked marked) {}

    @PostMapping("/green/{hole}/ground")
    String ground(Visit visit, @PathVariable String hole, Marked marked, RedirectAttributes on) {
        Session session = visit.session();
        Hole known = session.read(stores -> HoleChoice.hole(session.course(stores), hole));
        Optional<Spot> about = marked.drawn() ? Optional.empty() : Optional.of(EntryPlace.spot(marked.at()));
        OptionalDouble radius = marked.drawn()
                ? OptionalDouble.empty()
                : OptionalDouble.of(visit.unit().toMetres(AskedOfGreen.number("within", marked.within())));
        TypedEntry says = new TypedEntry(
                Optional.of(EntryForm.ofKind(MARKED)),
                parts(marked, known),
                about,
                radius,
                Optional.empty(),
                false,
                Optional.empty());
        boolean sure = Boolean.TRUE.equals(marked.sure());
        Entry entry = new Entry(List.of(hole), false, Optional.of(said(visit)), says, Optional.empty(), sure);
        try {
            kept(visit, new RecordFact(session).record(entry), on);
        } catch (Problem problem) {
            if (!LogProblems.asks(problem)) {
                throw problem;
            }
            on.addFlashAttribute("doubted", new Doubted(visit.texts().say(problem.what()), marked));
        }
        return back(visit, hole, marked.at(), on);
    }

    /** The next page says what is in the logbook now. */
    private static void kept(Visit visit, RecordFact.Answer answer, RedirectAttributes on) {
        FactText words = new FactText(visit.texts(), answer.course(), answer.policy());
        Stream<String> kept = answer.kept().stream().map(fact -> said(visit, words.says(fact)));
        Stream<String> remarks = answer.remarks().stream().map(visit.texts()::say);
        on.addFlashAttribute("said", Stream.concat(kept, remarks).toList());
    }

    private static String said(Visit visit, String what) {
        return visit.texts().say("log.page.kept", what);
    }

    /** It is said on the day that is looked at; of a coming one, today. */
    private static LocalDate said(Visit visit) {
        return visit.date().isAfter(visit.today()) ? visit.today() : visit.date();
    }

    private static Map<String, String> parts(Marked marked, Hole hole) {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("use", marked.use());
        parts.put("reason", marked.reason());
        parts.put("from", marked.from());
        if (!marked.until().isBlank() && !FREE.equals(marked.use())) {
            parts.put("until", marked.until());
        }
        if (marked.drawn()) {
            MapFrame frame = GreenMap.groundFrame(hole);
            parts.put(
                    "area",
                    Arrays.stream(marked.corners().strip().split(" +"))
                            .map(corner -> corner(corner, frame))
                            .collect(Collectors.joining(" ")));
        }
        return parts;
    }

    private static String corner(String text, MapFrame frame) {
        String[] both = text.split(",", 2);
        double x = AskedOfGreen.number("x", both[0]);
        double y = AskedOfGreen.number("y", both.length > 1 ? both[1] : "");
        return AskedOfGreen.at(frame.ground(x, y));
    }

    /**
     * What the level read at a spot.
     *
     * @param front how much the ground falls to the front, percent; below 0 it rises
     * @param left how much it falls to the left
     * @param steepest on a green without a line of play: how much it falls the steepest way
     * @param degrees which way that is, clockwise from the map's north
     */
    @PostMapping("/green/{hole}/level")
    String level(
            Visit visit,
            @PathVariable String hole,
            @RequestParam String at,
            @RequestParam(required = false) String front,
            @RequestParam(required = false) String left,
            @RequestParam(required = false) String steepest,
            @RequestParam(required = false) String degrees,
            RedirectAttributes on) {
        Map<String, Double> falls = steepest == null
                ? Map.of("front", AskedOfGreen.number("front", front), "left", AskedOfGreen.number("left", left))
                : Map.of(degrees == null ? "" : degrees.strip(), AskedOfGreen.number("steepest", steepest));
        KeepLevelReading.Kept kept = new KeepLevelReading(visit.session())
                .add(visit.question(), hole, EntryPlace.spot(at), new Falls(falls));
        on.addFlashAttribute("said", List.of(said(visit, reading(visit, kept))));
        return back(visit, hole, at, on);
    }

    private static String reading(Visit visit, KeepLevelReading.Kept kept) {
        CourseDay day = kept.day();
        MapPoint at = kept.reading().place();
        String where = new PositionText(visit.texts(), day.policy().get(PlacePolicy.PACE_METRES))
                .of(new GreenPlaces(day.course(), day.policy()).find(kept.hole().id(), at), at);
        return visit.texts().say("green.level.kept", where);
    }

    private static String back(Visit visit, String hole, String at, RedirectAttributes on) {
        on.addAttribute("hole", hole);
        on.addAttribute("date", visit.date().toString());
        if (!at.isBlank()) {
            on.addAttribute("at", at);
        }
        return "redirect:/green/{hole}";
    }
}
