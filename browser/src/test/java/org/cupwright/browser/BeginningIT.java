package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.browser.Workplace.button;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Mouse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * A club's first evening by clicks: its own picture, two known points, greens traced and one paced, numbered, the
 * practice green left out, and the card. {@link Lookers} look at each page of it on the way.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BeginningIT {
    /** The pages of an office that has no course, or has just been given one. */
    static final Set<String> PAGES = Set.of(
            "/begin/place",
            "/begin/greens",
            "/begin/greens/picture",
            "/begin/greens/paced",
            "/begin/greens/grid",
            "/begin/numbers",
            "/begin/settings",
            "/begin/look",
            "/begin/print");

    private static final int FOUND = 200;
    private static final int NOT_TAKEN = 422;

    private static final String PASSWORD = "three plain oars";

    private AerialPicture picture;
    private RunningOffice office;
    private Chromium chromium;
    private Lookers lookers;
    private final Set<String> seen = new TreeSet<>();

    @BeforeAll
    void open(@TempDir Path folder) throws IOException {
        picture = AerialPicture.drawn(folder.resolve("aerial.png"));
        office = RunningOffice.open(folder.resolve("data"));
        chromium = new Chromium();
    }

    @AfterAll
    void close() {
        lookers.close();
        chromium.close();
        office.close();
    }

    private static void fill(Page page, String field, String value) {
        page.locator("[id='" + field + "']").fill(value);
    }

    @Test
    void fromAnEmptyFolderToTheCard() {
        try (BrowserContext laptop = chromium.laptop(ColorScheme.LIGHT, "")) {
            Page page = laptop.newPage();
            StringBuilder complaints = new StringBuilder();
            page.onConsoleMessage(message -> {
                if (message.type().equals("error") && !message.text().contains("422")) {
                    complaints.append(message.text()).append('\n');
                }
            });
            page.onPageError(complaints::append);
            comeIn(page);
            lookers = new Lookers(chromium, office.at("/"), laptop.storageState());
            look("/begin/place");
            place(page);
            trace(page);
            pace(page);
            page.getByText("Go on with 4 greens").click();
            number(page);
            look("/begin/settings");
            button(page, "Keep it and go on").click(); // the settings as they come
            lookOver(page);
            button(page, "Yes, make the course").click();
            assertThat(page.locator("h1")).hasText("The first plan and its papers");
            look("/begin/print");
            print(page);
            assertThat(seen).isEqualTo(PAGES);
            assertThat(complaints).isEmpty();
        }
    }

    /** Everybody looks at a page as it is now. */
    private void look(String path) {
        seen.add(path);
        lookers.look(seen.size(), path, FOUND, page -> page.navigate(office.at(path)));
    }

    private void comeIn(Page page) {
        page.navigate(office.at("/join"));
        page.locator("[name=code]").fill(office.code().orElseThrow());
        page.locator("[name=name]").fill("Ida");
        page.locator("[name=password]").fill(PASSWORD);
        page.locator("main button").first().click();
        page.locator("[name=name]").fill("Ida");
        page.locator("[name=password]").fill(PASSWORD);
        page.locator("main button").first().click();
        assertThat(page.getByRole(AriaRole.HEADING, new GetByRoleOptions().setLevel(1)))
                .containsText("What the course is called");
    }

    /** A slip is told beside its field, and what was typed stands. */
    private void place(Page page) {
        fill(page, "name", "Three Birches");
        fill(page, "longitude", "twelve");
        fill(page, "latitude", "52.0");
        fill(page, "zone", "Europe/Berlin");
        button(page, "Keep it and go on").click();
        assertThat(page.locator(".field.wrong")).containsText("not a number");
        assertThat(page.locator("[id=name]")).hasValue("Three Birches");
        lookers.look(2, "a place with a slip", NOT_TAKEN, other -> {
            other.navigate(office.at("/begin/place"));
            fill(other, "longitude", "twelve");
            return other.waitForNavigation(
                    () -> other.locator("form.entry button.main").click());
        });
        fill(page, "longitude", "12.0");
        button(page, "Keep it and go on").click();
        look("/begin/greens");
        page.getByText("Trace on a picture").click();
    }

    /** Two points that are 320 m apart, then three greens: one by clicks, the others by their corners typed. */
    private void trace(Page page) {
        picture.choose(page);
        picture.click(page, 100, 500);
        fill(page, "firstEast", "294040");
        fill(page, "firstNorth", "5765000");
        page.locator("[data-mean=second]").click();
        picture.click(page, 900, 500);
        fill(page, "secondEast", "294360");
        fill(page, "secondNorth", "5765000");
        button(page, "Keep the two points").click();
        assertThat(page.getByText("A pixel is 0.40 m")).isVisible();
        look("/begin/greens/picture");
        picture.choose(page);
        picture.clickRound(page, 1);
        assertThat(page.locator("#corners").inputValue().split("\n")).hasSize(4);
        assertThat(Axe.found(page)).as("with a picture").isEmpty();
        button(page, "Keep it").click();
        assertThat(page.locator(".said")).containsText("Kept: the green of #1");
        for (int number = 2; number <= AerialPicture.GREENS; number++) {
            fill(page, "corners", picture.corners(number));
            button(page, "Keep it").click();
            assertThat(page.locator(".said")).containsText("Kept: the green of #" + number);
        }
        bunker(page);
        page.getByText("Back to the greens").click();
    }

    /** A green of which nobody has a picture: 24 m long and 20 m wide, its place unknown. */
    private void pace(Page page) {
        page.getByText("Type paced measures").click();
        look("/begin/greens/paced");
        look("/begin/greens/grid");
        page.locator("[id=unit]").selectOption("metres");
        fill(page, "length", "24");
        fill(page, "hole", "3");
        int row = 1;
        for (String on : List.of("4", "12", "20")) {
            fill(page, "on" + row, on);
            fill(page, "left" + row, row == 2 ? "10" : "7,5");
            fill(page, "right" + row, row == 2 ? "10" : "7.5");
            row++;
        }
        button(page, "Keep, and the next green").click();
        assertThat(page.locator(".said")).containsText("Kept: the green of");
        page.locator("a.button", new Page.LocatorOptions().setHasText("Back to the greens"))
                .click();
        assertThat(page.locator(".begun .rows li")).hasCount(4);
        assertThat(page.locator(".begun .rows li").last()).containsText("place unknown");
    }

    /** Beside the first green, 4 m to the east of its edge. */
    private void bunker(Page page) {
        picture.choose(page);
        page.locator("[name=kind][value=bunker]").check();
        picture.clickBeside(page, 1);
        button(page, "Keep it").click();
        assertThat(page.locator(".said")).containsText("Kept: a bunker of 51 m²");
        assertThat(page.locator(".said")).containsText("by the green of #1");
        assertThat(page.locator("[name=kind][value=bunker]")).isChecked(); // bunkers come in numbers
    }

    /** The eastern green is the first hole's, by order of clicks; it is played to from the west by a drag. */
    private void number(Page page) {
        look("/begin/numbers");
        Locator east = page.locator("[data-green='2'] circle");
        Locator west = page.locator("[data-green='1'] circle");
        assertThat(page.locator("[data-green='2'] .label text")).hasText("#2");
        east.click();
        west.click();
        assertThat(page.locator("#hole-2")).hasValue("1");
        assertThat(page.locator("#hole-1")).hasValue("2");
        BoundingBox box = east.boundingBox();
        Mouse mouse = page.mouse();
        mouse.move(box.x + box.width / 2, box.y + box.height / 2);
        mouse.down();
        mouse.move(box.x + box.width / 2 + 60, box.y + box.height / 2);
        mouse.up();
        assertThat(page.locator("#play-2")).hasValue("90");
        fill(page, "play-1", "south-west");
        page.locator("#out-3").check();
        fill(page, "play-4", "0");
        button(page, "Keep it and go on").click();
        assertThat(page.getByRole(AriaRole.HEADING, new GetByRoleOptions().setLevel(1)))
                .containsText("How you do it here");
    }

    /** The practice green is none of the course's; the paced one is its third, and nobody knows where it lies. */
    private void lookOver(Page page) {
        look("/begin/look");
        assertThat(page.locator(".smalls li")).hasCount(3);
        assertThat(page.locator("main")).containsText("3 greens in round order");
        assertThat(page.locator("main")).containsText("One practice green was left out");
        assertThat(page.locator("main")).containsText("Nobody has said where these greens lie");
    }

    private void print(Page page) {
        page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName("Plan "))
                .first()
                .click();
        button(page, "Publish").click();
        assertThat(page.locator("table.holes tbody tr[data-hole]")).hasCount(3);
        String address = page.getByRole(AriaRole.LINK, new GetByRoleOptions().setName("Changer's card"))
                .getAttribute("href");
        APIResponse paper = page.request().get(office.at(address));
        assertThat(paper.status()).isEqualTo(200);
        assertThat(new String(paper.body(), 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
    }
}
