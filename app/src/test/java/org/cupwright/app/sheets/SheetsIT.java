package org.cupwright.app.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.cupwright.app.desk.paper.PaperPolicy;
import org.cupwright.app.desk.paper.PaperSize;
import org.cupwright.app.desk.plan.CutSoFar;
import org.cupwright.app.sheets.PaperText.Letter;
import org.cupwright.app.storage.DaySpeed;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.LanguageFiles;
import org.cupwright.app.texts.Texts;
import org.cupwright.holelocation.FastestSpeed.Quickened;
import org.cupwright.policy.Policy;
import org.cupwright.settingout.PacedPlace;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SheetsIT {
    /** Office printers leave about 4 mm unprinted: recalled. */
    private static final double PRINTABLE_MILLIMETRES = 4;

    private final Texts texts =
            Texts.find("en", Door.COMMANDS, UnitSystem.METRIC, 0.914).orElseThrow();

    private byte[] sheet(PaperSize paper) {
        return new HoleLocationSheet(texts).pdf(MadeDay.on(paper));
    }

    private byte[] card(PaperSize paper) {
        return new ChangersCard(texts).pdf(MadeDay.on(paper));
    }

    @ParameterizedTest
    @EnumSource
    void theSheetNamesEveryHoleWithWordsPacesAndFlag(PaperSize paper) throws IOException {
        DaySheet day = MadeDay.on(paper);
        List<String> lines = PaperText.lines(sheet(paper));
        PlaceWords words = new PlaceWords(texts, day.paceMetres());
        Flags flags = new Flags(texts, day.policy());

        for (SheetHole hole : day.holes()) {
            PacedPlace place = hole.cut().orElseThrow().directions().place().orElseThrow();
            String row = hole.hole() + " " + words.area(place.metres()) + " " + words.paces(place.metres());
            assertThat(lines)
                    .anyMatch(line -> line.startsWith(row)
                            && line.endsWith(texts.halves(place.onPaces() + place.fromBackPaces()) + " "
                                    + flags.named(place.third())));
        }
        assertThat(PaperText.words(sheet(paper))).contains("Planned").contains("Wrenfold Moor (invented)");
    }

    @Test
    void theCardSaysWhatIsOutOfTheUsual() throws IOException {
        String text = PaperText.words(card(PaperSize.A4));

        assertThat(text).contains("Set aside today (slope)").contains("Use with care: ");
        assertThat(text).contains("Flags to load").contains("slope not checked");
        assertThat(text).contains("The paces fit more than one place: ").contains("from head 10-");
        assertThat(text)
                .contains("wait 30 minutes after the last")
                .contains("good within 1½ paces")
                .containsPattern("good just there( · [0-9½]+ from back)? With room: [a-z ]+ · [0-9]+½? on · [0-9]")
                .containsOnlyOnce("the same within 1½ paces");
        assertThat(text).contains("Wrenfold Moor (invented)").contains("Something odd? Ring:");
    }

    @Test
    void theCoursesOwnAnswersStandOnTheCard() throws IOException {
        DaySheet day = MadeDay.on(PaperSize.A4);
        DaySheet own = new DaySheet(
                day.course(),
                day.date(),
                day.speed(),
                new CutSoFar(
                        List.of("1", "2"), Optional.of(LocalTime.of(6, 40)), true, Map.of("2", LocalTime.of(11, 20))),
                day.holes(),
                day.blocks(),
                day.first(),
                day.policy()
                        .with(PaperPolicy.TICK_LIST, "long board, chalk")
                        .with(PaperPolicy.RING, "the shed, 12 34")
                        .with(PaperPolicy.FLAG_BACK, ""));
        String text = PaperText.words(new ChangersCard(texts).pdf(own));

        assertThat(text).contains("long board").contains("chalk").doesNotContain("cup puller");
        assertThat(text)
                .contains("Ring the shed, 12 34.")
                .contains("As cut at 06:40")
                .doesNotContain("B blue");
    }

    /** Also with a line about the speed that takes two. */
    @ParameterizedTest
    @EnumSource
    void aHoleMovedInPlayHasALineOfItsOwnAndTheSheetStaysOnePage(PaperSize paper) throws IOException {
        DaySheet day = MadeDay.on(paper);
        CutSoFar moved = new CutSoFar(
                List.of("1", "2"), Optional.of(LocalTime.of(11, 20)), false, Map.of("2", LocalTime.of(11, 20)));
        DaySpeed speed = new DaySpeed(
                10.2,
                DaySpeed.From.CARRIED,
                Optional.of(new DaySpeed.Reading(9.4, day.date().minusDays(1), Optional.empty())),
                List.of(new DaySpeed.Added(Quickened.DRYING, 0.5), new DaySpeed.Added(Quickened.ROLLED, 0.3)));
        byte[] pdf = new HoleLocationSheet(texts)
                .pdf(new DaySheet(
                        day.course(), day.date(), speed, moved, day.holes(), day.blocks(), day.first(), day.policy()));

        List<String> lines = PaperText.lines(pdf);
        int row = lines.indexOf("moved in play at 11:20");
        assertThat(lines.get(row - 1)).startsWith("2 ");
        assertThat(lines.get(row + 1)).startsWith("3 ");
        assertThat(PaperText.words(pdf)).containsOnlyOnce("moved in play").contains("Local rules");
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
        }
        allClear(pdf, paper);
    }

    /** Words are longer in some languages. */
    @ParameterizedTest
    @EnumSource
    void paperHasRoomForEveryLanguage(PaperSize paper) throws IOException {
        for (String language : LanguageFiles.languages()) {
            Texts own =
                    Texts.find(language, Door.COMMANDS, UnitSystem.PACES, 0.914).orElseThrow();
            byte[] sheet = new HoleLocationSheet(own).pdf(MadeDay.on(paper));
            byte[] card = new ChangersCard(own).pdf(MadeDay.on(paper));
            assertThat(List.of(pages(sheet), pages(card))).as(language).containsExactly(1, 2);
            allClear(sheet, paper);
            allClear(card, paper);
            offTheFolds(card, paper);
        }
    }

    /** With the link to the sheet as it is now, in the longest address that is taken. */
    @ParameterizedTest
    @EnumSource
    void aLinkLeavesTheSheetOnOnePage(PaperSize paper) throws IOException {
        DaySheet day = MadeDay.on(paper);
        Policy linked = day.policy()
                .with(PaperPolicy.PUBLIC_SHEET, true)
                .with(PaperPolicy.SHEET_LINK, "b".repeat(40))
                .with(PaperPolicy.OFFICE_ADDRESS, "https://" + "a".repeat(52));
        for (String language : LanguageFiles.languages()) {
            Texts own =
                    Texts.find(language, Door.COMMANDS, UnitSystem.PACES, 0.914).orElseThrow();
            byte[] sheet = new HoleLocationSheet(own)
                    .pdf(new DaySheet(
                            day.course(),
                            day.date(),
                            day.speed(),
                            day.soFar(),
                            day.holes(),
                            day.blocks(),
                            day.first(),
                            linked));
            assertThat(pages(sheet)).as(language).isEqualTo(1);
            allClear(sheet, paper);
        }
    }

    private static int pages(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        }
    }

    @ParameterizedTest
    @EnumSource
    void eighteenHolesTakeOnePageAndOneSheetOfPaper(PaperSize paper) throws IOException {
        for (byte[] pdf : List.of(sheet(paper), card(paper))) {
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat(document.getNumberOfPages()).isEqualTo(pdf.length == sheet(paper).length ? 1 : 2);
                for (PDPage page : document.getPages()) {
                    assertThat(page.getMediaBox().getWidth() * 25.4 / 72)
                            .isCloseTo((float) paper.widthMillimetres(), org.assertj.core.data.Offset.offset(0.2));
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void everyLetterIsOnThePaperAndClearOfTheOthers(PaperSize paper) throws IOException {
        for (byte[] pdf : List.of(sheet(paper), card(paper))) {
            assertThat(PaperText.letters(pdf)).hasSizeGreaterThan(500);
            allClear(pdf, paper);
        }
    }

    /** However much there is to know: it goes on over further quarters, and no word is lost. */
    @ParameterizedTest
    @EnumSource
    void manyNoticesPushNothingOffTheCard(PaperSize paper) throws IOException {
        DaySheet day = MadeDay.withMuchToKnow(paper);
        byte[] pdf = new ChangersCard(texts).pdf(day);
        String words = PaperText.words(pdf);

        assertThat(words).contains(day.first().toArray(String[]::new));
        assertThat(day.holes().stream().flatMap(hole -> hole.notices().stream()))
                .hasSizeGreaterThan(6)
                .allSatisfy(notice -> assertThat(words).contains(notice));
        assertThat(words).contains("Flags to load").contains("The hand work").contains("temporary green");
        assertThat(words.split("Know first", -1)).hasSizeGreaterThan(2);
        assertThat(words.split("old hole filled", -1)).hasSize(2);
        assertThat(words.split("as planned", -1)).hasSize(18);
        allClear(pdf, paper);
    }

    private static void allClear(byte[] pdf, PaperSize paper) throws IOException {
        List<Letter> letters = PaperText.letters(pdf);
        Rectangle2D printable = new Rectangle2D.Double(
                PRINTABLE_MILLIMETRES,
                PRINTABLE_MILLIMETRES,
                paper.widthMillimetres() - 2 * PRINTABLE_MILLIMETRES,
                paper.heightMillimetres() - 2 * PRINTABLE_MILLIMETRES);
        assertThat(letters).allMatch(letter -> printable.contains(letter.box()), "within the printable paper");
        for (int i = 0; i < letters.size(); i++) {
            Letter one = letters.get(i);
            assertThat(letters.subList(i + 1, letters.size()))
                    .noneMatch(other -> other.page() == one.page() && overlap(one.box(), other.box()));
        }
    }

    /** Neighbouring letters may touch. */
    private static boolean overlap(Rectangle2D one, Rectangle2D other) {
        Rectangle2D common = one.createIntersection(other);
        return common.getWidth() > 0.35 && common.getHeight() > 0.35;
    }

    @ParameterizedTest
    @EnumSource
    void nothingIsWrittenAcrossAFold(PaperSize paper) throws IOException {
        offTheFolds(card(paper), paper);
    }

    private static void offTheFolds(byte[] card, PaperSize paper) throws IOException {
        double down = paper.widthMillimetres() / 2;
        double across = paper.heightMillimetres() / 2;
        for (Letter letter : PaperText.letters(card)) {
            assertThat(letter.box().intersectsLine(down, 0, down, paper.heightMillimetres()))
                    .as(letter.toString())
                    .isFalse();
            assertThat(letter.box().intersectsLine(0, across, paper.widthMillimetres(), across))
                    .as(letter.toString())
                    .isFalse();
        }
    }

    @Test
    void everyFontIsEmbedded() throws IOException {
        for (byte[] pdf : List.of(sheet(PaperSize.A4), card(PaperSize.A4))) {
            try (PDDocument document = Loader.loadPDF(pdf)) {
                for (PDPage page : document.getPages()) {
                    assertThat(page.getResources().getFontNames()).isNotEmpty();
                    for (COSName name : page.getResources().getFontNames()) {
                        assertThat(page.getResources().getFont(name).isEmbedded())
                                .isTrue();
                        assertThat(page.getResources().getFont(name).getName()).contains("OpenSans");
                    }
                }
            }
        }
    }

    @Test
    void theSameDayGivesTheSameBytes() {
        assertThat(card(PaperSize.A4)).isEqualTo(card(PaperSize.A4));
        assertThat(sheet(PaperSize.LETTER)).isEqualTo(sheet(PaperSize.LETTER));
    }
}
