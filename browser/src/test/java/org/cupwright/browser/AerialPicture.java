package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/**
 * An invented picture of a course from above, of which a pixel is 0.4 m, with square greens of 48 by 48 pixels.
 *
 * @param file where it lies
 */
record AerialPicture(Path file) {
    private static final int WIDTH = 1000;
    private static final int HEIGHT = 600;
    private static final int HALF = 24;

    /** Middles of the greens. */
    private static final int[][] MIDDLES = {{200, 150}, {800, 420}, {500, 250}};

    private static final int[][] CORNERS = {{-HALF, -HALF}, {HALF, -HALF}, {HALF, HALF}, {-HALF, HALF}};

    /** How many greens there are. */
    static final int GREENS = MIDDLES.length;

    static AerialPicture drawn(Path file) throws IOException {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(new Color(90, 120, 70));
        pen.fillRect(0, 0, WIDTH, HEIGHT);
        pen.setColor(new Color(150, 190, 110));
        for (int[] middle : MIDDLES) {
            pen.fillRect(middle[0] - HALF, middle[1] - HALF, 2 * HALF, 2 * HALF);
        }
        pen.dispose();
        ImageIO.write(image, "png", file.toFile());
        return new AerialPicture(file);
    }

    /** Chooses it on its page, which takes it as soon as it can draw. */
    void choose(Page page) {
        assertThat(page.locator("#aerial")).isEnabled();
        page.locator("#aerial").setInputFiles(file);
        assertThat(page.locator("#picture")).isVisible();
    }

    /** Clicks a pixel of it. */
    void click(Page page, int right, int down) {
        page.locator("#picture").scrollIntoViewIfNeeded();
        BoundingBox box = page.locator("#picture").boundingBox();
        double scale = Math.min((box.width - 2) / WIDTH, (box.height - 2) / HEIGHT);
        double x = box.x + box.width / 2 + (right - WIDTH / 2.0) * scale;
        double y = box.y + box.height / 2 + (down - HEIGHT / 2.0) * scale;
        page.mouse().click(x, y);
    }

    /** Clicks the corners of a green, the first being 1. */
    void clickRound(Page page, int green) {
        int[] middle = MIDDLES[green - 1];
        for (int[] corner : CORNERS) {
            click(page, middle[0] + corner[0], middle[1] + corner[1]);
        }
    }

    /** Clicks the corners of a bunker 4 m to the east of a green. */
    void clickBeside(Page page, int green) {
        int[] middle = MIDDLES[green - 1];
        for (int[] corner : new int[][] {{34, -10}, {50, -10}, {50, 10}, {34, 10}}) {
            click(page, middle[0] + corner[0], middle[1] + corner[1]);
        }
    }

    /** The corners of a green as they are typed. */
    String corners(int green) {
        int[] middle = MIDDLES[green - 1];
        return Stream.of(CORNERS)
                .map(corner -> (middle[0] + corner[0]) + " " + (middle[1] + corner[1]))
                .collect(Collectors.joining("\n"));
    }
}
