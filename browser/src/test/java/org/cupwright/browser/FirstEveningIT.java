package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Mouse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** A club's first evening by clicks: its own picture, two known points, greens traced, numbered, and the card. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FirstEveningIT {
    private static final int WIDTH = 1000;
    private static final int HEIGHT = 600;
    private static final String PASSWORD = "three plain oars";

    /** Middles of the greens on the picture; a pixel is 0.4 m, each green 48 by 48 pixels. */
    private static final int[][] GREENS = {{200, 150}, {800, 420}};

    private Path picture;
    private RunningOffice office;
    private Chromium chromium;

    @BeforeAll
    void open(@TempDir Path folder) throws IOException {
        picture = folder.resolve("aerial.png");
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(new Color(90, 120, 70));
        pen.fillRect(0, 0, WIDTH, HEIGHT);
        pen.setColor(new Color(150, 190, 110));
        for (int[] green : GREENS) {
            pen.fillRect(green[0] - 24, green[1] - 24, 48, 48);
        }
        pen.dispose();
        ImageIO.write(image, "png", picture.toFile());
        office = RunningOffice.open(folder.resolve("data"));
        chromium = new Chromium();
    }

    @AfterAll
    void close() {
        chromium.close();
        office.close();
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new GetByRoleOptions().setName(name).setExact(true));
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
            place(page);
            trace(page);
            number(page);
            button(page, "Keep it and go on").click(); // the settings as they come
            assertThat(page.locator(".smalls li")).hasCount(2);
            button(page, "Yes, make the course").click();
            print(page);
            assertThat(complaints).isEmpty();
        }
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
    private static void place(Page page) {
        fill(page, "name", "Three Birches");
        fill(page, "longitude", "twelve");
        fill(page, "latitude", "52.0");
        fill(page, "zone", "Europe/Berlin");
        button(page, "Keep it and go on").click();
        assertThat(page.locator(".field.wrong")).containsText("not a number");
        assertThat(page.locator("[id=name]")).hasValue("Three Birches");
        fill(page, "longitude", "12.0");
        button(page, "Keep it and go on").click();
        page.getByText("Trace on a picture").click();
    }

    /** Two points that are 320 m apart, then both greens: one by clicks, the other by its corners typed. */
    private void trace(Page page) {
        page.locator("#aerial").setInputFiles(picture);
        assertThat(page.locator("#picture")).isVisible();
        click(page, 100, 500);
        fill(page, "firstEast", "294040");
        fill(page, "firstNorth", "5765000");
        page.locator("[data-mean=second]").click();
        click(page, 900, 500);
        fill(page, "secondEast", "294360");
        fill(page, "secondNorth", "5765000");
        button(page, "Keep the two points").click();
        assertThat(page.getByText("A pixel is 0.40 m")).isVisible();
        page.locator("#aerial").setInputFiles(picture);
        int[][] corners = {{-24, -24}, {24, -24}, {24, 24}, {-24, 24}};
        for (int[] corner : corners) {
            click(page, GREENS[0][0] + corner[0], GREENS[0][1] + corner[1]);
        }
        assertThat(page.locator("#corners").inputValue().split("\n")).hasSize(4);
        button(page, "Keep it").click();
        assertThat(page.locator(".said")).containsText("Kept: the green of #1");
        page.locator("#aerial").setInputFiles(picture);
        StringBuilder typed = new StringBuilder();
        for (int[] corner : corners) {
            typed.append(GREENS[1][0] + corner[0])
                    .append(' ')
                    .append(GREENS[1][1] + corner[1])
                    .append('\n');
        }
        fill(page, "corners", typed.toString());
        button(page, "Keep it").click();
        assertThat(page.locator(".said")).containsText("Kept: the green of #2");
        page.getByText("Back to the greens").click();
        page.getByText("Go on with 2 greens").click();
    }

    private static void click(Page page, int right, int down) {
        page.locator("#picture").scrollIntoViewIfNeeded();
        BoundingBox box = page.locator("#picture").boundingBox();
        double scale = Math.min((box.width - 2) / WIDTH, (box.height - 2) / HEIGHT);
        double x = box.x + box.width / 2 + (right - WIDTH / 2.0) * scale;
        double y = box.y + box.height / 2 + (down - HEIGHT / 2.0) * scale;
        page.mouse().click(x, y);
    }

    /** The eastern green is the first hole's, by order of clicks; it is played to from the west by a drag. */
    private static void number(Page page) {
        Locator east = page.locator("[data-green='2'] circle");
        Locator west = page.locator("[data-green='1'] circle");
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
        button(page, "Keep it and go on").click();
        assertThat(page.getByRole(AriaRole.HEADING, new GetByRoleOptions().setLevel(1)))
                .containsText("How you do it here");
    }

    private void print(Page page) {
        page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName("Plan "))
                .first()
                .click();
        button(page, "Publish").click();
        assertThat(page.locator("table.holes tbody tr[data-hole]")).hasCount(2);
        String address = page.getByRole(AriaRole.LINK, new GetByRoleOptions().setName("Changer's card"))
                .getAttribute("href");
        APIResponse paper = page.request().get(office.at(address));
        assertThat(paper.status()).isEqualTo(200);
        assertThat(new String(paper.body(), 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
    }
}
