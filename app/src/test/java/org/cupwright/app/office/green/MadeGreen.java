package org.cupwright.app.office.green;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Stream;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.green.AssessGreen;
import org.cupwright.app.desk.green.JudgedGreen;
import org.cupwright.app.desk.plan.ShowHole;
import org.cupwright.app.maps.GreenMap;
import org.cupwright.app.office.work.Searches;
import org.cupwright.app.office.work.Works;
import org.cupwright.app.session.CourseChoice;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.session.Speech;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.OfficeHouse;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.Course;
import org.cupwright.course.CourseFrame;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.SurveyKind;
import org.cupwright.green.SurveyPoint;
import org.cupwright.green.SurveyPoints;
import org.cupwright.testing.Shapes;
import org.cupwright.units.Heading;
import org.cupwright.units.Paces;
import org.cupwright.units.UnitSystem;

/**
 * A folder with an invented course of two greens with five corners, which look the same from no two sides: the first
 * was surveyed (seed 7), falls 1 m in 100 to the west and is played to on a heading of {@link #PLAY}; of the second
 * only the outline is known.
 */
final class MadeGreen implements AutoCloseable {
    static final LocalDate TODAY = LocalDate.of(2026, 6, 20);
    static final Heading PLAY = new Heading(60);
    static final double EAST = 500_000;
    static final double NORTH = 4_400_000;

    /** As the reader hears of them: their corners in the order in which they are kept. */
    static final double[] CORNERS = {
        EAST, NORTH, EAST + 24, NORTH, EAST + 24, NORTH + 26, EAST + 10, NORTH + 32, EAST, NORTH + 18
    };

    private static final String COURSE = "made";
    private static final double STEP_METRES = 0.5;
    private static final double FALL = 0.01;
    private static final double NOISE_METRES = 0.004;
    private static final Instant MORNING = Instant.parse("2026-06-20T05:00:00Z");

    /** A second later whenever it is asked, as entries of one moment have no order. */
    private static final class Ticking extends Clock {
        private Instant now = MORNING;

        @Override
        public Instant instant() {
            now = now.plusSeconds(1);
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return Clock.fixed(now, zone);
        }
    }

    private final Clock clock = new Ticking();

    private final DataFolder folder;
    private final Works works;
    private final UnitSystem units;

    /** Filled once in a process, with what measuring the surveyed green came to: that takes many times a copy. */
    private static Path filled;

    MadeGreen(Path data) {
        this(data, UnitSystem.PACES);
    }

    /** @param units in which its visitors are told lengths, and type them */
    MadeGreen(Path data, UnitSystem units) {
        copy(data);
        folder = new SqliteFolder(data, clock);
        works = new Works(
                new OfficeHouse(() -> new SqliteFolder(data, clock), clock, "test", false), Duration.ofMinutes(5));
        this.units = units;
    }

    private static synchronized void copy(Path data) {
        try {
            if (filled == null) {
                filled = Files.createTempDirectory("cupwright-green");
                try (DataFolder made = new SqliteFolder(filled, Clock.fixed(MORNING, ZoneOffset.UTC))) {
                    Writes.to(made, MadeGreen::fill);
                    Session session =
                            session(made, Clock.fixed(MORNING, ZoneOffset.UTC), Role.READER, UnitSystem.PACES);
                    new AssessGreen(session).judged(DayQuestion.of(TODAY), "1");
                }
                leaveNothing(filled);
            }
            try (Stream<Path> all = Files.walk(filled)) {
                for (Path each : (Iterable<Path>) all::iterator) {
                    Files.copy(each, data.resolve(filled.relativize(each).toString()));
                }
            }
        } catch (IOException full) {
            throw new UncheckedIOException(full);
        }
    }

    /** Files are removed before the folders they are in: the last that is named goes first. */
    private static void leaveNothing(Path made) throws IOException {
        try (Stream<Path> all = Files.walk(made)) {
            all.forEach(path -> path.toFile().deleteOnExit());
        }
    }

    private static void fill(Stores stores) {
        Outline outline = Shapes.polygon(CORNERS);
        Random random = new Random(7);
        List<SurveyPoint> points = new ArrayList<>();
        for (double east = EAST - 1; east <= EAST + 25; east += STEP_METRES) {
            for (double north = NORTH - 1; north <= NORTH + 33; north += STEP_METRES) {
                double height = 100 + FALL * (east - EAST) + NOISE_METRES * random.nextGaussian();
                points.add(new SurveyPoint(east, north, height));
            }
        }
        stores.courses()
                .add(new Course(
                        COURSE,
                        "Made (invented)",
                        new CourseFrame(32626, ZoneId.of("UTC")),
                        List.of(hole("1", outline), hole("2", outline))));
        stores.surveys()
                .add(
                        COURSE,
                        new GreenSurvey(
                                "1",
                                SurveyPoints.scattered(points).as(SurveyKind.LEVELLED),
                                new GreenSurvey.Origin(32626, "m", "invented")));
    }

    private static Hole hole(String id, Outline outline) {
        return new Hole(
                id,
                outline,
                Optional.of(LineOfPlay.towards(outline, PLAY)),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    private static Session session(DataFolder folder, Clock clock, Role role, UnitSystem units) {
        return new Session(
                folder,
                new Person("Ash", role),
                new CourseChoice(Optional.of(COURSE)),
                clock,
                UUID::randomUUID,
                new Speech(Door.PAGES, "en", units, Paces.STANDARD_METRES));
    }

    Visit visit(Role role) {
        return visit(role, TODAY);
    }

    Visit visit(Role role, LocalDate date) {
        Session session = session(folder, clock, role, units);
        Texts texts = Texts.find("en", Door.PAGES, units, Paces.STANDARD_METRES).orElseThrow();
        return new Visit(session, texts, TODAY, date, List.of(COURSE), "Made (invented)", "test");
    }

    /** Somebody whose machine's clock is days ahead. */
    Visit ahead(int days) {
        Session session = session(folder, Clock.offset(clock, Duration.ofDays(days)), Role.CHANGER, units);
        Visit own = visit(Role.CHANGER);
        LocalDate date = TODAY.plusDays(days);
        return new Visit(session, own.texts(), date, date, own.courses(), own.courseName(), own.version());
    }

    /** What a visitor presses. */
    HoleWishController wishes() {
        return new HoleWishController(works);
    }

    /** The hole is put at a spot for a day, by somebody who has seen its plan. */
    String set(Visit visit, String hole, MapPoint at, LocalDate date, long seen) {
        return wishes().set(visit, hole, AskedOfGreen.at(at), new ForDay(date, seen).text());
    }

    ShowHole.Answer stands(Visit visit, String hole) {
        return new ShowHole(visit.session()).of(visit.question(), hole);
    }

    JudgedGreen judged(Visit visit, String hole) {
        return new AssessGreen(visit.session()).judged(stands(visit, hole).question(), hole);
    }

    /** What the page says of a spot. */
    SpotView.Part part(Visit visit, String hole, AskedOfGreen asked) {
        ShowHole.Answer stands = stands(visit, hole);
        LevelView.Shown level = asked.levelAsked()
                ? new LevelView(
                                visit,
                                new LevelRounds(new Searches(works))
                                        .sought(visit, stands, asked)
                                        .found()
                                        .orElseThrow())
                        .shown()
                : LevelView.Shown.NOTHING;
        return new SpotView(visit, stands, judged(visit, hole), asked, GreenMap.groundFrame(stands.hole()), level)
                .part();
    }

    /** The page. */
    GreenView.Page page(Visit visit, String hole) {
        GreenView view = new GreenView(visit, stands(visit, hole), judged(visit, hole));
        return view.page(view.drawing());
    }

    static AskedOfGreen at(MapPoint point) {
        return asked(null, null, AskedOfGreen.at(point), null);
    }

    static AskedOfGreen clicked(double x, double y) {
        return asked(Double.toString(x), Double.toString(y), null, null);
    }

    static AskedOfGreen asked(String x, String y, String at, String hold) {
        return new AskedOfGreen(x, y, at, null, null, null, hold, null, null, null);
    }

    @Override
    public void close() {
        works.close();
        folder.close();
    }
}
