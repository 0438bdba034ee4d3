package org.cupwright.app.sheets;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.cupwright.app.answers.BlockText;
import org.cupwright.app.desk.plan.CutSoFar;
import org.cupwright.app.maps.GreenDrawing;
import org.cupwright.app.maps.MadeDrawing;
import org.cupwright.app.storage.DaySpeed;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Course;
import org.cupwright.course.CourseFrame;
import org.cupwright.course.Hole;
import org.cupwright.course.Loop;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CupWork.CutSomewhere;
import org.cupwright.green.Lateral;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.green.PlacePolicy;
import org.cupwright.green.Side;
import org.cupwright.green.Third;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.Policy;
import org.cupwright.settingout.Directions;
import org.cupwright.settingout.FromMark;
import org.cupwright.settingout.Leeway;
import org.cupwright.settingout.PacedPlace;
import org.cupwright.testing.Shapes;
import org.cupwright.units.UnitSystem;

/** Paper of an invented course with paces of a metre, written as markup and read as lines: no PDF, no survey. */
final class SmallDay {
    static final Texts TEXTS =
            Texts.find("en", Door.COMMANDS, UnitSystem.METRIC, 1).orElseThrow();
    static final MapPoint AT = new MapPoint(10, 20);

    /** 22 of 30 paces on, 5 from the left: nearer to the back. */
    static final PlaceOnGreen BACK_LEFT = new PlaceOnGreen(22, 8, Side.LEFT, 5, Third.BACK, Lateral.LEFT);

    /** 6½ of 30 paces on, 4 from the right. */
    static final PlaceOnGreen FRONT_RIGHT = new PlaceOnGreen(6.5, 23.5, Side.RIGHT, 4, Third.FRONT, Lateral.RIGHT);

    private SmallDay() {}

    static Policy policy() {
        return Policy.defaults().with(PlacePolicy.PACE_METRES, 1.0);
    }

    static DaySheet of(List<SheetHole> holes, List<Loop> blocks, CutSoFar soFar, List<String> first, Policy policy) {
        List<Hole> known = holes.stream().map(hole -> hole.drawing().hole()).toList();
        Course course = new Course("made", "Invented", new CourseFrame(32633, ZoneOffset.UTC), known, blocks);
        return new DaySheet(
                "Invented",
                LocalDate.of(2026, 6, 20),
                DaySpeed.of(10, DaySpeed.From.NOT_KEPT),
                soFar,
                holes,
                new BlockText(TEXTS, course),
                first,
                policy);
    }

    static DaySheet of(SheetHole... holes) {
        return of(List.of(holes), List.of(), CutSoFar.NOTHING, List.of(), policy());
    }

    /** So many holes of which nothing is planned. */
    static List<SheetHole> open(String letter, int from, int to) {
        return IntStream.rangeClosed(from, to)
                .mapToObj(i -> hole(letter + i, Optional.empty(), Optional.empty()))
                .toList();
    }

    static SheetHole hole(String name, Optional<SheetHole.Cut> cut, Optional<PlaceOnGreen> last, String... notices) {
        return new SheetHole(
                name,
                cut,
                last,
                Optional.empty(),
                drawing(name),
                false,
                List.of(notices),
                Optional.empty(),
                Optional.empty());
    }

    static SheetHole staying(String name, SheetHole.Cut cut, LocalDate since) {
        return new SheetHole(
                name,
                Optional.of(cut),
                Optional.empty(),
                Optional.empty(),
                drawing(name),
                false,
                List.of(),
                Optional.of(since),
                Optional.empty());
    }

    static SheetHole rough(String name, CutSomewhere part) {
        return new SheetHole(
                name,
                Optional.empty(),
                Optional.empty(),
                Optional.of(part),
                drawing(name),
                false,
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    static SheetHole temporary(String name, SheetHole.Cut cut, Optional<PlaceOnGreen> last) {
        return new SheetHole(
                name,
                Optional.of(cut),
                last,
                Optional.empty(),
                drawing(name),
                true,
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    private static GreenDrawing drawing(String name) {
        int east = 100 * Math.floorMod(name.hashCode(), 1000);
        return MadeDrawing.of(Hole.of(name, Shapes.rectangle(east, 0, east + 20, 30)));
    }

    static SheetHole.Cut cut(PlaceOnGreen place, double goodWithinMetres) {
        Leeway leeway = new Leeway(goodWithinMetres, goodWithinMetres, Optional.empty());
        return cut(Optional.of(paced(place)), Optional.empty(), Optional.of(leeway));
    }

    static SheetHole.Cut cut(Optional<PacedPlace> place, Optional<FromMark> way, Optional<Leeway> leeway) {
        return new SheetHole.Cut(
                new Directions(AT, place, way, leeway),
                Optional.empty(),
                true,
                Verdict.PASS,
                true,
                Set.of(),
                Optional.empty());
    }

    static PacedPlace paced(PlaceOnGreen place) {
        return new PacedPlace(place, place.onMetres(), place.fromBackMetres(), place.sideMetres());
    }

    /** What markup says, an element of its own a line; drawings and style left out. */
    static List<String> lines(String xhtml) {
        String words = xhtml.replaceAll("(?s)<head>.*?</head>", "")
                .replaceAll("(?s)<svg .*?</svg>", "")
                .replaceAll("</(div|p|h1|h2|li|td|th)>", "\n")
                .replaceAll("<[^>]*>", "");
        List<String> lines = new ArrayList<>();
        for (String line : words.split("\n", -1)) {
            if (!line.isBlank()) {
                lines.add(line.strip());
            }
        }
        return lines;
    }

    /** The lines of the changer's card. */
    static List<String> card(DaySheet day) {
        return lines(new ChangersCard(TEXTS).xhtml(day));
    }

    static List<String> card(SheetHole... holes) {
        return card(of(holes));
    }

    static List<String> card(Policy policy, List<String> first, SheetHole... holes) {
        return card(of(List.of(holes), List.of(), CutSoFar.NOTHING, first, policy));
    }
}
