package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Two greens on which the planned spot will not do, with no office: its process has ended. */
class NotHereIT {
    private static final String BY_THE_LIST = "3";
    private static final String BY_THE_MAP = "12";

    /** A day that nobody has planned. */
    private static final String AREA_DAY = "2026-06-25";

    @TempDir
    private Path folder;

    private Path data() {
        return folder.resolve("data");
    }

    private static void signIn(Page page) {
        page.locator("#name").fill(Workplace.FIRST);
        page.locator("#password").fill(Workplace.PASSWORD);
        page.locator("button.main").click();
    }

    @Test
    void anotherSpotIsFoundCutAndToldOnceWithNoOffice() throws Exception {
        MadeOffice.copyTo(data());
        RunningOffice office = RunningOffice.open(data());
        int port = office.port();
        List<String> told = new ArrayList<>();
        try (Chromium chromium = new Chromium();
                BrowserContext phone = chromium.phoneWithMemory(folder.resolve("phone"))) {
            Page page = phone.newPage();
            page.navigate(office.at("/round?date=" + Days.FIRST));
            signIn(page);
            assertThat(page.locator(".greens li")).hasCount(18);
            page.evaluate("navigator.serviceWorker.ready.then(worker => worker.scope)");
            page.waitForFunction("navigator.serviceWorker.controller !== null");
            assertThat(page.locator("#content")).hasAttribute("aria-busy", "false");
            office.close();
            told.add(byTheList(page));
            told.add(byTheMap(page));
            assertThat(page.locator("#unsent")).containsText("3 entries are on this phone alone");
            office = RunningOffice.open(data(), port);
            page.locator("button:text-is('Send now')").click();
            page.locator("a[href='/round/again']").click();
            signIn(page);
            page.waitForURL("**/round");
            assertThat(page.locator("#unsent")).hasText("All you wrote down has been sent.");
        } finally {
            office.close();
        }
        assertArrived(List.of(BY_THE_LIST, BY_THE_MAP), told, 1);
    }

    /** The plan names the area, and the spot is whoever's who cuts: taps in the area and beside it, and a cut there. */
    @Test
    void theSpotIsChosenInTheDaysArea() throws Exception {
        MadeOffice.copyTo(data());
        Files.writeString(folder.resolve("areas.csv"), areas());
        run(
                "import",
                "--json",
                "--course",
                "wrenfold-moor",
                "--drawn",
                folder.resolve("areas.csv").toString());
        run("policy", "--json", "rotation.cycle=1 2", "rotation.cycleFrom=" + AREA_DAY, "rotation.scheme=areaOnly");
        run("plan", "--json", "--date", AREA_DAY);
        String place;
        try (RunningOffice office = RunningOffice.open(data());
                Chromium chromium = new Chromium();
                BrowserContext phone = chromium.phoneWithMemory(folder.resolve("phone"))) {
            Page page = phone.newPage();
            page.navigate(office.at("/round?date=" + AREA_DAY));
            signIn(page);
            assertThat(page.locator(".greens li")).hasCount(18);
            open(page, BY_THE_LIST);
            assertThat(page.locator("#not-here")).hasText("Choose the spot in area 1");
            tap(page, ".area-today", 0.5, 0.5);
            place = page.locator("#chosen-place").textContent();
            assertThat(page.locator(".instead")).not().containsText("Outside the day's area");
            tap(page, ".edge", 0.5, 0.97);
            assertThat(page.locator(".instead")).containsText("Outside the day's area 1.");
            assertThat(page.locator(".instead .judged")).hasText("do not cut");
            tap(page, ".area-today", 0.5, 0.5);
            assertThat(page.locator("#chosen-place")).hasText(place);
            cutHere(page);
            assertThat(page.locator("#unsent")).hasText("All you wrote down has been sent.");
        }
        assertArrived(List.of(BY_THE_LIST), List.of(place), 0);
    }

    private static String areas() {
        String areas = IntStream.rangeClosed(1, 18)
                .mapToObj(hole -> hole + ",area,10,L8,5,1\n" + hole + ",area,18,R7,4,2\n")
                .collect(Collectors.joining());
        return "hole,kind,on,side,radius,area\n" + areas;
    }

    private static void open(Page page, String hole) {
        page.evaluate("hole => { location.hash = '#' + hole; }", hole);
        assertThat(page.locator("h1")).containsText("Hole " + hole);
        page.locator("#not-here").click();
        assertThat(page.locator("#other-spots")).isVisible();
    }

    /** The first of the next best spots; a ball that was rolled there ran on, so that the second is taken. */
    private static String byTheList(Page page) {
        open(page, BY_THE_LIST);
        String first = page.locator("#spot-1 b").textContent();
        page.locator("#spot-1").click();
        String place = page.locator("#chosen-place").textContent();
        assertThat(first).isEqualTo("1 · " + place);
        page.locator("summary:text-is('Roll a ball')").click();
        page.locator("#roll-way").selectOption("left");
        page.locator("#roll-ran").click();
        assertThat(page.locator(".rolled .advice")).hasText("A ball ran on here: choose another spot.");
        page.locator("#not-here").click();
        page.locator("#spot-2").click();
        assertThat(page.locator(".rolled .advice")).hasCount(0);
        page.reload(); // as a phone does that was in a pocket
        String second = page.locator("#chosen-place").textContent();
        assertThat(second).isNotEqualTo(place);
        cutHere(page);
        return second;
    }

    /** A tap to the left of the middle of the green is a spot to the left, one to the right a spot to the right. */
    private static String byTheMap(Page page) {
        open(page, BY_THE_MAP);
        tap(page, ".edge", 0.62, 0.5);
        assertThat(page.locator("#chosen-place")).containsText(Pattern.compile(" right$"));
        assertThat(Axe.found(page)).isEmpty();
        assertThat((Integer) page.evaluate("document.documentElement.scrollWidth"))
                .isLessThanOrEqualTo(360);
        tap(page, ".edge", 0.38, 0.5);
        assertThat(page.locator("#chosen-place")).containsText(Pattern.compile(" left$"));
        String place = page.locator("#chosen-place").textContent();
        tap(page, ".edge", 0, 0); // a corner of the box about it
        assertThat(page.locator("#other-spots")).containsText("That is off the green.");
        assertThat(page.locator("#chosen-place")).hasText(place);
        cutHere(page);
        return place;
    }

    /** Taps the map so far across and down something that is drawn on it, as a finger would. */
    private static void tap(Page page, String drawn, double across, double down) {
        Locator map = page.locator(".land svg");
        map.scrollIntoViewIfNeeded();
        BoundingBox whole = map.boundingBox();
        BoundingBox box = page.locator(".land svg " + drawn).boundingBox();
        double x = box.x - whole.x + across * box.width;
        double y = box.y - whole.y + down * box.height;
        map.click(new Locator.ClickOptions().setPosition(x, y));
    }

    private static void cutHere(Page page) {
        page.locator("#cut-here").click();
        assertThat(page.locator("#became")).containsText("Cut elsewhere");
        assertThat(page.locator("#not-here")).hasCount(0);
    }

    /** Each once, at the place that was said, and the balls that ran on. */
    private void assertArrived(List<String> cut, List<String> told, int ran) throws Exception {
        List<String> holes = new ArrayList<>();
        List<String> places = new ArrayList<>();
        int rolled = 0;
        for (JsonNode fact : log().path("facts")) {
            if (!fact.path("person").asString().equals(Workplace.FIRST)) {
                continue;
            }
            String kind = fact.at("/payload/kind").asString();
            if (kind.equals("cupChanged")) {
                holes.add(fact.path("hole").asString());
                assertThat(fact.at("/payload/cutAt").equals(fact.at("/payload/planned")))
                        .isFalse();
                places.add(where(fact));
            }
            if (kind.equals("rolledByHand")) {
                rolled++;
                assertThat(fact.at("/payload/stopped").asBoolean()).isFalse();
            }
        }
        assertThat(holes).containsExactlyInAnyOrderElementsOf(cut);
        assertThat(places).containsExactlyInAnyOrderElementsOf(told);
        assertThat(rolled).isEqualTo(ran);
    }

    /** What the office says of the place, in its own words. */
    private String where(JsonNode fact) throws Exception {
        JsonNode at = fact.at("/payload/cutAt");
        JsonNode judged = run(
                "assess",
                "--hole",
                fact.path("hole").asString(),
                "--date",
                Days.FIRST,
                "--json",
                "--at",
                at.path("east").asString() + "," + at.path("north").asString());
        JsonNode place = judged.path("position");
        String lateral = place.path("lateral").asString();
        String third = place.path("third").asString();
        return (third.equals("middle") && lateral.equals("centre") ? "middle" : third + " " + lateral)
                + " · " + halves(place.path("onPaces").asDouble()) + " on · "
                + halves(place.path("sidePaces").asDouble())
                + (place.path("side").asString().equals("L") ? " from left" : " from right");
    }

    private static String halves(double paces) {
        String whole = Long.toString((long) Math.floor(paces));
        return paces == Math.floor(paces) ? whole : (whole.equals("0") ? "" : whole) + "½";
    }

    private JsonNode log() throws Exception {
        return run(
                "log",
                "list",
                "--json",
                "--from",
                Days.FIRST,
                "--to",
                LocalDate.now(ZoneOffset.UTC).plusDays(1).toString());
    }

    private JsonNode run(String... line) throws IOException, InterruptedException {
        Path out = folder.resolve("out.json");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                RunningOffice.JAR.toString()));
        command.addAll(List.of(line));
        command.addAll(List.of("--data", data().toString()));
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(folder.resolve("err").toFile())
                .start();
        assertThat(process.waitFor())
                .as(Files.readString(folder.resolve("err")))
                .isZero();
        return JsonMapper.shared().readTree(Files.readString(out));
    }
}
