package org.cupwright.app.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.cupwright.app.maps.GreenDrawing;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.OnConvention;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.Policy;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;

class SheetsTest {
    private final DemoCourse demo = new DemoCourse(1);
    private final Texts texts = Texts.find("en", UnitSystem.METRIC, 0.914).orElseThrow();

    @Test
    void theSheetNamesEveryHoleWithWordsAndPaces() throws IOException {
        DaySheet day = day();
        String text = text(new HoleLocationSheet(texts).pdf(day));
        PlaceWords words = new PlaceWords(texts, day.paceMetres());

        for (SheetHole hole : day.holes()) {
            PlaceOnGreen place = hole.place().orElseThrow();
            assertThat(text).contains(words.area(place)).contains(words.on(place) + " on · " + words.side(place));
        }
        assertThat(text).contains("Planned").contains("Wrenfold Moor (invented)");
    }

    @Test
    void theCardSaysWhatIsSetAsideAndWhatToLoad() throws IOException {
        String text = text(new ChangersCard(texts).pdf(day()));

        assertThat(text).contains("set aside today: slope").contains("Flags to load: ");
        assertThat(text).contains("wait 30 minutes after the last").contains("good within 1½ paces");
    }

    @Test
    void theSameDayGivesTheSameBytes() {
        assertThat(new ChangersCard(texts).pdf(day())).isEqualTo(new ChangersCard(texts).pdf(day()));
    }

    private DaySheet day() {
        List<SheetHole> holes = demo.course().holes().stream().map(this::hole).toList();
        return new DaySheet(
                DemoCourse.NAME,
                DemoCourse.TODAY,
                10,
                OnConvention.ALONG_CHORD,
                0.914,
                Optional.empty(),
                holes,
                Policy.defaults());
    }

    private SheetHole hole(Hole hole) {
        MapPoint spot = hole.green().centroid();
        GreenFrame frame = GreenFrame.of(hole, OnConvention.ALONG_CHORD).orElseThrow();
        Set<RuleId> setAside = hole.id().equals("4") ? Set.of(RuleId.LEVEL) : Set.of();
        return new SheetHole(
                hole.id(),
                hole.par(),
                Optional.of(frame.place(spot)),
                "",
                1.5,
                setAside.isEmpty() ? Verdict.PASS : Verdict.CAUTION,
                true,
                setAside,
                Optional.of(frame.place(frame.at(2, -3))),
                GreenDrawing.of(hole).withSurface(demo.trueSurface(hole.id())).withSpots(List.of(spot)));
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replace('\n', ' ').replaceAll("\\s+", " ");
        }
    }
}
