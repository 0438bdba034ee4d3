package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import org.cupwright.app.cli.InProcess.Result;
import org.cupwright.app.cli.WallSheet.Letter;
import org.cupwright.democourse.DemoCourse;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The sheet for the wall says of every hole and day what the plan says as JSON; read by the places of its letters. */
class WeeksPaperIT {
    private static final LocalDate FIRST = DemoCourse.TODAY;
    private static final int DAYS = 28;

    /** Smaller letters are not read on a wall: our choice. */
    private static final double SMALLEST_POINTS = 6.5;

    /** Office printers leave about 4 mm unprinted: recalled. */
    private static final double UNPRINTED_MILLIMETRES = 4;

    /** Between numbers that are not to part. */
    private static final String BLANK = "\u00a0";

    @TempDir
    static Path files;

    private static InProcess cupwright;

    /** The days as the plan says them, by date. */
    private static final Map<LocalDate, JsonNode> PLAN = new LinkedHashMap<>();

    @BeforeAll
    static void planFourWeeks() throws IOException {
        Path data = files.resolve("data");
        DemoFolder.copyTo(data);
        cupwright = new InProcess(data);
        take(cupwright.run("plan", "--days", DAYS, "--date", FIRST, "--json"));
        for (int day = 0; day < 2; day++) {
            assertThat(cupwright
                            .run("publish", "--yes", "--date", FIRST.plusDays(day))
                            .status())
                    .isZero();
        }
        take(cupwright.run(
                "plan",
                "--hole",
                7,
                "--on",
                12,
                "--side",
                "L8",
                "--person",
                "Ash",
                "--date",
                FIRST.plusDays(3),
                "--json"));
    }

    private static void take(Result plan) {
        assertThat(plan.status()).as(plan.err()).isZero();
        for (JsonNode day : JsonMapper.shared().readTree(plan.out()).path("days")) {
            PLAN.put(LocalDate.parse(day.path("date").asString()), day);
        }
    }

    private static Path sheet(InProcess program, int days, Object... more) {
        Path out = files.resolve("out-" + days + "-" + more.length + "-" + System.nanoTime());
        List<Object> arguments = new ArrayList<>(List.of("sheets", "--days", days, "--out", out, "--person", "Ash"));
        arguments.addAll(List.of(more));
        Result written = program.run(arguments.toArray());
        assertThat(written.status()).as(written.err()).isZero();
        assertThat(written.err()).isEmpty();
        return out.resolve("weeks.pdf");
    }

    @ParameterizedTest
    @CsvSource({
        "a4, 28, 297, 210",
        "letter, 28, 279.4, 215.9",
        "a4, 14, 210, 297",
        "letter, 7, 215.9, 279.4",
        "a4, 3, 210, 297"
    })
    void everyHoleOfEveryDayStandsWhereItBelongs(String paper, int days, double width, double height)
            throws IOException {
        assertThat(cupwright
                        .run("policy", "paper.size=" + paper, "--date", FIRST)
                        .status())
                .isZero();
        List<WallSheet> pages = WallSheet.pages(sheet(cupwright, days));
        assertThat(pages).hasSize(1);
        WallSheet page = pages.get(0);
        assertThat(page.widthMillimetres()).isCloseTo(width, within(0.2));
        assertThat(page.heightMillimetres()).isCloseTo(height, within(0.2));
        assertThat(page.dates())
                .isEqualTo(PLAN.keySet().stream()
                        .limit(days)
                        .map(WeeksPaperIT::head)
                        .toList());
        boolean words = days <= 7;
        PLAN.entrySet().stream().limit(days).forEach(day -> holds(page, day.getKey(), day.getValue(), words));
        readable(page);
    }

    private static String head(LocalDate date) {
        return DateTimeFormatter.ofPattern("dMMM", Locale.ENGLISH).format(date);
    }

    private static void holds(WallSheet page, LocalDate date, JsonNode day, boolean words) {
        boolean published = date.isBefore(FIRST.plusDays(2));
        String weekday = DateTimeFormatter.ofPattern("EEE", Locale.ENGLISH).format(date);
        assertThat(page.head(head(date)))
                .containsExactly(weekday, head(date), published ? (words ? "published" : "publ.") : "draft");
        Map<String, List<String>> cells = page.cells(head(date));
        List<String> holes = new ArrayList<>();
        for (JsonNode hole : day.path("holes")) {
            String name = hole.path("hole").asString();
            holes.add(name);
            assertThat(cells.get(name)).as(date + " " + name).isEqualTo(cell(hole, words));
        }
        assertThat(holes).hasSize(18);
        assertThat(cells.keySet().stream().limit(18)).containsExactlyElementsOf(holes);
        List<List<String>> sums = cells.values().stream().skip(18).toList();
        assertThat(sums)
                .containsExactly(
                        List.of(counted(day, "third", "front", "middle", "back")),
                        List.of(counted(day, "lateral", "left", "centre", "right")),
                        List.of(count(day, WeeksPaperIT::withCare) + BLANK + count(day, WeeksPaperIT::setAside)));
    }

    private static List<String> cell(JsonNode hole, boolean words) {
        JsonNode at = hole.path("position");
        String third = at.path("third").asString();
        String lateral = upper(at.path("lateral").asString());
        String shown = words ? third.replace("middle", "mid") : upper(third);
        String signs = (setAside(hole) ? "!" : withCare(hole) ? "*" : "")
                + (hole.path("askedBy").isString() ? "+" : "");
        boolean left = at.path("side").asString().equals("L");
        String side = words ? (left ? "left" : "right") : left ? "L" : "R";
        return List.of(
                shown + lateral + signs,
                "on" + halves(at.path("onPaces").asDouble()),
                side + halves(at.path("sidePaces").asDouble()));
    }

    private static String upper(String word) {
        return word.substring(0, 1).toUpperCase(Locale.ROOT);
    }

    private static boolean setAside(JsonNode hole) {
        return !hole.path("setAside").isEmpty();
    }

    private static boolean withCare(JsonNode hole) {
        return !setAside(hole) && !hole.path("verdict").asString().equals("pass");
    }

    private static String halves(double paces) {
        String whole = paces >= 1 || paces == 0 ? Integer.toString((int) paces) : "";
        return paces == Math.rint(paces) ? whole : whole + "½";
    }

    private static String counted(JsonNode day, String what, String... parts) {
        List<String> counted = new ArrayList<>();
        for (String part : parts) {
            int holes = count(
                    day, hole -> hole.path("position").path(what).asString().equals(part));
            counted.add(Integer.toString(holes));
        }
        return String.join(BLANK, counted);
    }

    private static int count(JsonNode day, Predicate<JsonNode> which) {
        int count = 0;
        for (JsonNode hole : day.path("holes")) {
            count += which.test(hole) ? 1 : 0;
        }
        return count;
    }

    /** Large enough, where printers print, and clear of each other. */
    private static void readable(WallSheet page) {
        Rectangle2D printed = new Rectangle2D.Double(
                UNPRINTED_MILLIMETRES,
                UNPRINTED_MILLIMETRES,
                page.widthMillimetres() - 2 * UNPRINTED_MILLIMETRES,
                page.heightMillimetres() - 2 * UNPRINTED_MILLIMETRES);
        List<Letter> letters = page.letters();
        for (int i = 0; i < letters.size(); i++) {
            Letter letter = letters.get(i);
            assertThat(letter.points()).as(letter.toString()).isGreaterThan(SMALLEST_POINTS);
            assertThat(printed.contains(letter.box())).as(letter.toString()).isTrue();
            for (Letter other : letters.subList(i + 1, letters.size())) {
                Rectangle2D common = letter.box().createIntersection(other.box());
                if (common.getWidth() > 0.35 && common.getHeight() > 0.35) {
                    throw new AssertionError(letter + " and " + other + " lie over each other");
                }
            }
        }
    }

    @Test
    void itSaysWhoWroteItWhenAndWhatItRestsOn() throws IOException {
        WallSheet page = WallSheet.pages(sheet(cupwright, DAYS)).get(0);
        StringBuilder text = new StringBuilder();
        page.letters().forEach(letter -> text.append(letter.text()));
        assertThat(text.toString())
                .contains("WrittenSat20Jun2026byAsh.", "Weatherofthe28daysuptoFri17Jul2026:")
                .contains("Sat20JuntoFri17Jul2026·26drafts·2published", "greenspeed10ft");
    }

    @Test
    void theSamePlansGiveTheSameBytes() throws IOException {
        assertThat(Files.readAllBytes(sheet(cupwright, 7))).isEqualTo(Files.readAllBytes(sheet(cupwright, 7)));
    }

    /** Pages of four weeks; nines stand whole, two on a page. */
    @Test
    void longerPlansAndMoreHolesGoOnOverFurtherPages() throws IOException {
        InProcess nine = made("nine", 9);
        assertThat(nine.run("plan", "--days", 30).status()).isZero();
        List<WallSheet> pages = WallSheet.pages(sheet(nine, 30));
        assertThat(pages).hasSize(2);
        assertThat(pages.get(0).dates()).hasSize(28).startsWith("20Jun").endsWith("17Jul");
        assertThat(pages.get(1).dates()).containsExactly("18Jul", "19Jul");
        pages.forEach(page -> assertThat(page.labels()).startsWith("1", "2").contains("9"));
        pages.forEach(WeeksPaperIT::readable);

        InProcess more = made("more", 27);
        assertThat(more.run("plan", "--days", 2).status()).isZero();
        List<WallSheet> parts = WallSheet.pages(sheet(more, 2));
        List<String> holes = new ArrayList<>();
        for (WallSheet part : parts) {
            assertThat(part.dates()).containsExactly("20Jun", "21Jun");
            part.labels().stream().filter(label -> label.matches("\\d+")).forEach(holes::add);
            readable(part);
        }
        List<String> all = new ArrayList<>();
        for (int hole = 1; hole <= 27; hole++) {
            all.add(Integer.toString(hole));
        }
        assertThat(holes).isEqualTo(all);
    }

    private static InProcess made(String name, int greens) throws IOException {
        InProcess program = new InProcess(files.resolve(name));
        Path outlines = MadeCourse.outlines(Files.createDirectories(files.resolve(name + "-files")), greens);
        assertThat(program.run("import", "--course", "made", "--outlines", outlines)
                        .status())
                .isZero();
        return program;
    }

    @Test
    void daysWithoutAPlanAreNamed_andNothingIsWritten() {
        Path out = files.resolve("none");
        Result refused = cupwright.run("sheets", "--days", DAYS + 7, "--out", out, "--csv", out.resolve("plan.csv"));
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err())
                .contains("7 of the 35 days have no plan", "2026-07-18, 2026-07-19", "…", "option --days")
                .contains("cupwright plan --days 35 --date 2026-06-20");
        assertThat(out).doesNotExist();
        for (String days : List.of("0", "-1", "367")) {
            Result wrong = cupwright.run("sheets", "--days", days, "--out", out);
            assertThat(wrong.status()).isEqualTo(1);
            assertThat(wrong.err()).contains("1 to 366", "at most 366 days");
        }
        assertThat(cupwright.run("sheets", "--person", "Ash", "--out", out).status())
                .isEqualTo(2);
        assertThat(out).doesNotExist();
    }
}
