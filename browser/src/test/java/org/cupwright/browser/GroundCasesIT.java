package org.cupwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Stream;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.green.GreenOnDay;
import org.cupwright.app.desk.paper.ShowDay;
import org.cupwright.app.session.CourseChoice;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.session.Speech;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.texts.Door;
import org.cupwright.holelocation.Verdict;
import org.cupwright.holelocation.judging.GreenJudgement;
import org.cupwright.testing.Suite;
import org.cupwright.units.Paces;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the phone says of a green's ground is what the office says of it, at every spot. */
class GroundCasesIT {
    private static final Path CASES = Path.of("../app/src/test/resources/org/cupwright/app/field/ground-cases");

    /** The picture of a green, a letter a spot, north above. */
    private static final String PICTURE = """
            async carried => {
              const {open, saidOf} = await import('/ground.js');
              const green = open(JSON.parse(carried));
              const letters = {pass: 'o', caution: 'c', fail: 'x', notSurveyed: '?'};
              const rows = Array.from({length: green.rows}, (_, up) => green.rows - 1 - up);
              return rows.map(row => Array.from({length: green.columns}, (_, column) =>
                letters[saidOf(green, row * green.columns + column)?.verdict] ?? '.').join(''));
            }
            """;

    /** Where each twenty-ninth spot is, and how far about it it is as good. */
    private static final String SOME = """
            async ({carried, pace}) => {
              const {open, room, saidOf, spotAt} = await import('/ground.js');
              const {placeOf} = await import('/places.js');
              const {halves} = await import('/measures.js');
              const green = open(JSON.parse(carried));
              const said = [];
              for (let cell = 0; cell < green.cells.length; cell += 29) {
                const ground = saidOf(green, cell);
                if (!ground) { continue; }
                const at = spotAt(green, cell);
                const place = placeOf(green, at);
                const paces = metres => halves(metres, pace).toFixed(1);
                const where = !place ? '-' : [['front', 'middle', 'back'][place.third],
                  ['left', 'centre', 'right'][place.lateral], 'on', paces(place.on),
                  ...(place.side === 'L' ? ['left', paces(place.left)] : ['right', paces(place.right)])].join(' ');
                said.push(at.map(metres => metres.toFixed(2)).join(',') + ' ' + where + ' room '
                  + (ground.rank <= 1 ? room(green, cell).toFixed(2) : '-'));
              }
              return said;
            }
            """;

    /** The way from every thirty-first spot to its place in paces, and on the map, and back. */
    private static final String AND_BACK = """
            async ({carried, map}) => {
              const {cellAt, onGround, onMap, open, paced, saidOf, spotAt} = await import('/ground.js');
              const {placeOf} = await import('/places.js');
              const green = open({...JSON.parse(carried), map});
              const lost = [];
              for (let cell = 0; cell < green.cells.length; cell += 31) {
                if (!saidOf(green, cell)) { continue; }
                const at = spotAt(green, cell);
                if (cellAt(green, onGround(green, ...onMap(green, at))) !== cell) { lost.push(['map', ...at]); }
                const place = placeOf(green, at);
                if (!place) { continue; }
                const found = paced(green, place.on, place.side, place.side === 'L' ? place.left : place.right);
                const there = placeOf(green, spotAt(green, found));
                if (found < 0 || Math.abs(there.on - place.on) > 0.3) { lost.push(['paces', ...at]); }
              }
              return lost;
            }
            """;

    private static final String NEXT_BEST = """
            async ({carried, from, others, rules}) => {
              const {nextBest, open} = await import('/ground.js');
              return nextBest(open(JSON.parse(carried)), from, JSON.parse(others), JSON.parse(rules));
            }
            """;

    @TempDir
    private Path folder;

    private static FieldModules modules;

    @BeforeAll
    static void open() {
        modules = new FieldModules();
    }

    @AfterAll
    static void close() {
        modules.close();
    }

    private static String carried(List<String> lines) {
        String begins = "carried: ";
        return lines.stream()
                .filter(line -> line.startsWith(begins))
                .map(line -> line.substring(begins.length()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void thePhoneReadsWhatTheOfficeSaidInEverySharedCase() throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(CASES)) {
            files = all.sorted().toList();
        }
        assertThat(files).hasSizeGreaterThanOrEqualTo(4);
        for (Path file : files) {
            List<String> lines = Files.readAllLines(file);
            int judged = lines.indexOf("judged:");
            int said = lines.indexOf("said:");
            String carried = carried(lines);
            assertThat(modules.ask(PICTURE, carried)).as(file.toString()).isEqualTo(lines.subList(judged + 1, said));
            assertThat(modules.ask(SOME, Map.of("carried", carried, "pace", Paces.STANDARD_METRES)))
                    .as(file.toString())
                    .isEqualTo(lines.subList(said + 1, lines.size()));
            List<Double> turned = List.of(12.0, 7.0, 0.03, -0.01, -0.01, -0.03); // right and down on a turned map
            assertThat(modules.ask(AND_BACK, Map.of("carried", carried, "map", turned)))
                    .as(file.toString())
                    .isEqualTo(List.of());
        }
    }

    @Test
    void theNextBestSpotsAreThoseFoundByTryingAll() {
        int greens = Suite.count("next best spots", 200, 24);
        Random random = new Random(Suite.seed());
        int found = 0;
        for (int i = 0; i < greens; i++) {
            MadeLookUp made = MadeLookUp.random(random);
            NextBestByTrying trying = new NextBestByTrying(made);
            Object answer = modules.ask(
                    NEXT_BEST,
                    Map.of(
                            "carried", made.carried(),
                            "from", List.of(made.from().east(), made.from().north()),
                            "others", made.others(),
                            "rules", made.rules()));
            List<Integer> cells = ((List<?>) answer)
                    .stream().map(one -> ((Number) one).intValue()).toList();
            assertThat(cells.stream().map(trying::score).toList())
                    .as("green " + i + ", seed " + Suite.seed())
                    .isEqualTo(trying.find().stream().map(trying::score).toList());
            found += cells.size();
        }
        assertThat(found).isGreaterThan(greens);
    }

    @Test
    void everySpotOfTheInventedCourseIsJudgedAsAtTheDesk() throws Exception {
        MadeOffice.copyTo(folder.resolve("data"));
        List<GreenOnDay> greens = atTheDesk();
        int spots = 0;
        try (RunningOffice office = RunningOffice.open(folder.resolve("data"));
                Chromium chromium = new Chromium()) {
            for (JsonNode part : carriedDay(office, chromium).path("parts")) {
                for (JsonNode hole : part.path("holes")) {
                    GreenJudgement judgement = greens.stream()
                            .filter(green ->
                                    green.hole().id().equals(hole.path("hole").asString()))
                            .findFirst()
                            .orElseThrow()
                            .judgement();
                    List<String> desk = picture(judgement);
                    assertThat(modules.ask(PICTURE, hole.path("ground").toString()))
                            .as(hole.path("hole").asString())
                            .isEqualTo(desk);
                    spots += desk.stream()
                            .mapToInt(row -> row.replace(".", "").length())
                            .sum();
                }
            }
        }
        assertThat(spots).isGreaterThan(50_000);
    }

    private List<GreenOnDay> atTheDesk() {
        Clock clock = Clock.fixed(Instant.parse("2026-06-20T05:00:00Z"), ZoneOffset.UTC);
        try (SqliteFolder data = new SqliteFolder(folder.resolve("data"), clock)) {
            Session session = new Session(
                    data,
                    new Person("Ash", Role.READER),
                    new CourseChoice(Optional.empty()),
                    clock,
                    UUID::randomUUID,
                    new Speech(Door.PAGES, "en", UnitSystem.METRIC, Paces.STANDARD_METRES));
            return new ShowDay(session)
                    .of(DayQuestion.of(LocalDate.parse(Days.FIRST)), Progress.unheard())
                    .paper()
                    .orElseThrow()
                    .greens();
        }
    }

    private static JsonNode carriedDay(RunningOffice office, Chromium chromium) {
        try (var phone = chromium.phone(com.microsoft.playwright.options.ColorScheme.LIGHT, "")) {
            var page = phone.newPage();
            page.navigate(office.at("/round?date=" + Days.FIRST));
            page.locator("#name").fill(Workplace.FIRST);
            page.locator("#password").fill(Workplace.PASSWORD);
            page.locator("button.main").click();
            page.waitForSelector(".greens li");
            return JsonMapper.shared().readTree((String)
                    page.evaluate("async day => (await fetch('/round/day?date=' + day)).text()", Days.FIRST));
        }
    }

    private static List<String> picture(GreenJudgement judgement) {
        int columns = judgement.lattice().columns();
        List<String> rows = new ArrayList<>();
        for (int row = judgement.lattice().rows() - 1; row >= 0; row--) {
            StringBuilder letters = new StringBuilder();
            for (int column = 0; column < columns; column++) {
                letters.append(judgement
                        .findVerdict(row * columns + column)
                        .map(GroundCasesIT::letter)
                        .orElse('.'));
            }
            rows.add(letters.toString());
        }
        return rows;
    }

    private static char letter(Verdict verdict) {
        return switch (verdict) {
            case PASS -> 'o';
            case CAUTION -> 'c';
            case FAIL -> 'x';
            case NOT_SURVEYED -> '?';
        };
    }
}
