package org.cupwright.app.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import org.cupwright.app.desk.paper.PaperPolicy;
import org.cupwright.app.desk.paper.PaperSize;
import org.cupwright.app.desk.plan.CutSoFar;
import org.cupwright.policy.Policy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The link on paper, read from the printed page as a telephone reads it. */
class LinkOnPaperTest {
    private static final int DOTS_AN_INCH = 300;
    private static final double MILLIMETRES_A_DOT = 25.4 / DOTS_AN_INCH;
    private static final double LEAST_SQUARE_MILLIMETRES = 0.4;
    private static final String LINK = "k7m2p9qrs4tuvwx3yz5a";
    private static final String ADDRESS = "https://greens.example.org/sheet/" + LINK;

    private static final Policy GIVEN_OUT = SmallDay.policy()
            .with(PaperPolicy.PUBLIC_SHEET, true)
            .with(PaperPolicy.SHEET_LINK, LINK)
            .with(PaperPolicy.OFFICE_ADDRESS, "https://greens.example.org");

    private static DaySheet day(Policy policy) {
        return SmallDay.of(SmallDay.open("", 1, 18), List.of(), CutSoFar.NOTHING, List.of(), policy);
    }

    private static byte[] sheet(Policy policy) {
        return new HoleLocationSheet(SmallDay.TEXTS).pdf(day(policy));
    }

    @ParameterizedTest
    @EnumSource
    void aTelephoneReadsTheLinkThatStandsBesideInWords(PaperSize paper) throws IOException {
        byte[] pdf = sheet(GIVEN_OUT.with(PaperPolicy.PAPER, paper));
        assertThat(ReadCode.on(pdf, DOTS_AN_INCH).map(ReadCode::text)).contains(ADDRESS);
        assertThat(PaperText.words(pdf)).contains("Today's holes as they are now: " + ADDRESS);
    }

    @Test
    void theOtherWayRoundItIsNone() throws IOException {
        BufferedImage page = ReadCode.picture(sheet(GIVEN_OUT), DOTS_AN_INCH);
        BufferedImage mirrored = new BufferedImage(page.getWidth(), page.getHeight(), BufferedImage.TYPE_INT_RGB);
        mirrored.createGraphics().drawImage(page, page.getWidth(), 0, -page.getWidth(), page.getHeight(), null);
        assertThat(ReadCode.in(page)).isPresent();
        assertThat(ReadCode.in(mirrored)).isEmpty();
    }

    /** A square is wide enough, also in the longest address there may be; and there is white about all of them. */
    @Test
    void itsSquaresAreWideEnoughAndHaveWhiteAboutThem() throws IOException {
        Policy longest = GIVEN_OUT
                .with(PaperPolicy.OFFICE_ADDRESS, "https://" + "a".repeat(52))
                .with(PaperPolicy.SHEET_LINK, "b".repeat(40));
        for (Policy policy : List.of(GIVEN_OUT, longest)) {
            byte[] pdf = sheet(policy);
            ReadCode code = ReadCode.on(pdf, DOTS_AN_INCH).orElseThrow();
            Rectangle dark = dark(ReadCode.picture(pdf, DOTS_AN_INCH), code.squares());
            double square = dark.width * MILLIMETRES_A_DOT / code.squares();
            assertThat(square).isGreaterThan(LEAST_SQUARE_MILLIMETRES).isCloseTo(0.5, within(0.01));
            assertThat(dark.height).isCloseTo(dark.width, within(1));
            assertThat(PaperText.letters(pdf))
                    .noneMatch(letter -> letter.box()
                            .intersects(
                                    dark.x * MILLIMETRES_A_DOT - 4 * square,
                                    dark.y * MILLIMETRES_A_DOT - 4 * square,
                                    (code.squares() + 8) * square,
                                    (code.squares() + 8) * square));
        }
    }

    /** From the corner of the code that is nearest to the page's upper right one, as wide and high as it is dark. */
    private static Rectangle dark(BufferedImage page, int squares) {
        int top = (int) (20 / MILLIMETRES_A_DOT); // below the heading's line
        int about = (int) ((squares + 3) * 0.5 / MILLIMETRES_A_DOT);
        int right = (int) ((210 - 16) / MILLIMETRES_A_DOT);
        Rectangle dark = new Rectangle(-1, -1);
        for (int y = top; y < top + about + (int) (4 / MILLIMETRES_A_DOT); y++) {
            for (int x = right - about - (int) (2 / MILLIMETRES_A_DOT); x < right; x++) {
                if ((page.getRGB(x, y) & 0xff) < 0x80) {
                    dark.add(new Rectangle(x, y, 1, 1));
                }
            }
        }
        return dark;
    }

    /** Not while it is given to nobody, has no link, or nobody knows where the office is found. */
    @Test
    void nothingIsPrintedThatLeadsNowhere() {
        String without = new HoleLocationSheet(SmallDay.TEXTS).xhtml(day(SmallDay.policy()));
        for (Policy policy : List.of(
                GIVEN_OUT.with(PaperPolicy.PUBLIC_SHEET, false),
                GIVEN_OUT.with(PaperPolicy.SHEET_LINK, ""),
                GIVEN_OUT.with(PaperPolicy.OFFICE_ADDRESS, ""))) {
            assertThat(new HoleLocationSheet(SmallDay.TEXTS).xhtml(day(policy))).isEqualTo(without);
        }
        assertThat(without).doesNotContain("http://g", "https://g", "sheet/");
        assertThat(new HoleLocationSheet(SmallDay.TEXTS).xhtml(day(GIVEN_OUT))).contains(ADDRESS);
    }
}
