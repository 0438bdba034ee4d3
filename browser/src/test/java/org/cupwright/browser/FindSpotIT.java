package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.cupwright.browser.Workplace.button;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Geolocation;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.api.Assertions;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.Projection;
import org.cupwright.units.Heading;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import tools.jackson.databind.JsonNode;

/**
 * The spot is found with a telephone and no office. Where it lies is asked of the command line, and where the telephone
 * stands is worked out from the map of the course: by nothing that the page was told.
 */
class FindSpotIT {
    private static final String DAY = Days.FIRST;
    private static final String HOLE = "4";
    private static final double PACE_METRES = 0.914;

    private static final Hole GREEN = new DemoCourse(1).course().find(HOLE).orElseThrow();
    private static final Heading PLAY =
            GREEN.lineOfPlay().map(LineOfPlay::atGreen).orElseThrow();

    @TempDir
    private static Path folder;

    private static MapPoint spot;
    private static String round;
    private static Chromium chromium;
    private static BrowserContext phone;
    private static Page page;

    /** The day is loaded, and the office is no more. */
    @BeforeAll
    static void loaded() throws Exception {
        Path data = folder.resolve("data");
        MadeOffice.copyTo(data);
        JsonNode why = Commands.answer(data, "explain", "--hole", HOLE, "--date", DAY);
        spot = new MapPoint(
                why.at("/position/east").asDouble(), why.at("/position/north").asDouble());
        chromium = new Chromium();
        phone = chromium.phoneWithMemory(folder.resolve("phone"));
        page = phone.newPage();
        try (RunningOffice office = RunningOffice.open(data)) {
            round = office.at("/round?date=" + DAY);
            page.navigate(round);
            page.locator("#name").fill(Workplace.FIRST);
            page.locator("#password").fill(Workplace.PASSWORD);
            page.locator("button.main").click();
            assertThat(page.locator(".greens li")).hasCount(18);
            page.waitForFunction("navigator.serviceWorker.controller !== null");
            assertThat(page.locator("#content")).hasAttribute("aria-busy", "false");
        }
    }

    @AfterAll
    static void close() {
        phone.close();
        chromium.close();
    }

    @BeforeEach
    void open() {
        page.navigate("about:blank");
        page.navigate(round + "#" + HOLE);
        assertThat(page.locator("h1")).containsText("Hole " + HOLE);
    }

    private Locator part(String name) {
        return page.locator("summary", new Page.LocatorOptions().setHasText(name));
    }

    /** The telephone so far short of the spot and to the right of it, as the map of the course has right. */
    private void stand(double shortMetres, double rightMetres, double within) {
        MapPoint at = spot.moved(PLAY, -shortMetres).moved(PLAY.turnedClockwise(90), rightMetres);
        Coordinate degrees = Projection.between(CoordinateFrame.of(32_626), CoordinateFrame.of(CoordinateFrame.WGS84))
                .apply(at.east(), at.north());
        phone.setGeolocation(new Geolocation(degrees.y, degrees.x).setAccuracy(within));
    }

    private double drawn(String what) {
        return Double.parseDouble(
                page.locator(".land .here circle:not(.within)").getAttribute(what));
    }

    @Test
    void thePhoneHintsAtWhereItStands() {
        String before = onThePhone();
        Locator hint = page.locator("#phone-hint");
        stand(6.4, 2.8, 5);
        phone.grantPermissions(List.of("geolocation"));
        assertThat(hint).isEmpty(); // nothing before the tap
        button(page, "Where am I?").click();
        assertThat(hint).hasText("You are about 7 paces short and 3 paces right, ± 5 m: a hint only.");
        double x = drawn("cx");
        double y = drawn("cy");
        stand(6.4, -2.8, 5);
        assertThat(hint).hasText("You are about 7 paces short and 3 paces left, ± 5 m: a hint only.");
        Assertions.assertThat(drawn("cx")).isLessThan(x);
        Assertions.assertThat(drawn("cy")).isCloseTo(y, within(0.5)); // as far on
        stand(-3.7, -2.8, 8);
        assertThat(hint).hasText("You are about 4 paces past it and 3 paces left, ± 8 m: a hint only.");
        Assertions.assertThat(drawn("cy")).isLessThan(y); // on is up
        stand(0.1, 0.1, 4);
        assertThat(hint).hasText("You are about there, ± 4 m: a hint only.");
        stand(0, 0, 60);
        assertThat(hint).containsText("no help");
        stand(900, 0, 5);
        assertThat(hint).containsText("900 m from here");
        button(page, "Stop looking").click();
        assertThat(hint).isEmpty();
        assertThat(page.locator(".land .here")).hasCount(0);
        Assertions.assertThat(onThePhone()).isEqualTo(before); // of where it was nothing stays there
    }

    /** What lies on the telephone: plain storage, and what is to be sent. */
    private static String onThePhone() {
        return (String) page.evaluate("async () => JSON.stringify([{...localStorage},"
                + " await (await import('/round/files/kept.js')).entries()])");
    }

    @Test
    void aPhoneThatGivesNothingIsSaidSo() {
        phone.clearPermissions();
        button(page, "Where am I?").click();
        assertThat(page.locator("#phone-hint")).containsText("does not give this page its position");
        assertThat(button(page, "Where am I?")).isVisible();
    }

    @Test
    void ownStepsOutliveTheBrowser() {
        assertThat(page.locator(".paced")).not().containsText("your steps");
        walked("20");
        assertThat(page.locator("#own-step")).containsText("Your step is 1.00 m");
        walked("60");
        assertThat(page.locator("[role=alert]")).containsText("A step of 0.33 m?");
        assertThat(page.locator("#own-step")).containsText("1.00 m");
        walked("25");
        assertThat(page.locator("#own-step")).containsText("Your step is 0.80 m; the course's pace is 0.91 m.");
        phone.close();
        phone = chromium.phoneWithMemory(folder.resolve("phone"));
        page = phone.newPage();
        open();
        String on = page.locator(".paced li").first().textContent();
        double paces = halves(on.substring(0, on.indexOf(" on = ")));
        double steps = halves(on.substring(on.indexOf(" = ") + 3, on.indexOf(" of your steps")));
        Assertions.assertThat(steps * 0.8).isCloseTo(paces * PACE_METRES, within((0.8 + PACE_METRES) / 4));
        Assertions.assertThat(steps).isGreaterThan(paces);
        part("Your own step").click();
        button(page, "Forget it").click();
        assertThat(page.locator(".paced")).not().containsText("your steps");
    }

    private void walked(String steps) {
        if (!page.locator("#step-count").isVisible()) {
            part("Your own step").click();
        }
        page.locator("#step-count").fill(steps);
        page.locator("form:has(#step-count) button").click();
    }

    /** As they are said: 9½. */
    private static double halves(String text) {
        return text.endsWith("½")
                ? Double.parseDouble("0" + text.substring(0, text.length() - 1)) + 0.5
                : Double.parseDouble(text);
    }

    @Test
    void twoTapesLeadToTheSpotAndBack() {
        part("Two tapes").click();
        assertThat(page.locator(".reads")).hasCount(2);
        for (int i = 0; i < 2; i++) {
            String[] says = page.locator(".reads").nth(i).textContent().split(" m from ");
            MapPoint mark = GREEN.marks().stream()
                    .filter(one -> one.name().equals(says[1]))
                    .findFirst()
                    .orElseThrow()
                    .at();
            Assertions.assertThat(Double.parseDouble(says[0])).isCloseTo(mark.distanceMetres(spot), within(0.0051));
            page.locator("#tape-" + i).fill(says[0]);
        }
        assertThat(page.locator("#tape-gives")).containsText("That is the spot.");
        page.locator("#tape-0").fill("60");
        assertThat(page.locator("#tape-gives")).containsText("do not meet");
        assertThat(page.locator(".ellipse ellipse")).isVisible();
        assertThat(page.locator(".land .tapes line")).hasCount(2);
        String first = page.locator(".reads").first().textContent();
        page.locator("#tape-pair").selectOption("1");
        assertThat(page.locator(".reads").first()).not().hasText(first);
        assertThat(page.locator("#tape-gives")).isEmpty();
    }
}
