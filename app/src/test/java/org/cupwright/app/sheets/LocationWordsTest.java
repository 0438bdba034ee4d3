package org.cupwright.app.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.app.sheets.SmallDay.BACK_LEFT;
import static org.cupwright.app.sheets.SmallDay.FRONT_RIGHT;
import static org.cupwright.app.sheets.SmallDay.TEXTS;
import static org.cupwright.app.sheets.SmallDay.cut;
import static org.cupwright.app.sheets.SmallDay.hole;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.app.desk.plan.CutSoFar;
import org.cupwright.course.Loop;
import org.junit.jupiter.api.Test;

/** What the sheet of hole locations says, read from its markup. */
class LocationWordsTest {
    private static String sheet(DaySheet day) {
        return new HoleLocationSheet(TEXTS).xhtml(day);
    }

    private static DaySheet day(List<SheetHole> holes, CutSoFar soFar, Loop... blocks) {
        return SmallDay.of(holes, List.of(blocks), soFar, List.of(), SmallDay.policy());
    }

    private static int count(String xhtml, String part) {
        return xhtml.split(part, -1).length - 1;
    }

    @Test
    void aHoleIsALineOfWordsPacesDepthAndFlag() {
        SheetHole back = hole("1", Optional.of(cut(BACK_LEFT, 1)), Optional.empty());
        SheetHole front = hole("2", Optional.of(cut(FRONT_RIGHT, 1)), Optional.empty());
        SheetHole none = hole("3", Optional.empty(), Optional.empty());
        CutSoFar soFar =
                new CutSoFar(List.of("2"), Optional.of(LocalTime.of(6, 40)), false, Map.of("2", LocalTime.of(11, 20)));
        List<String> lines = SmallDay.lines(sheet(day(List.of(back, front, none), soFar)));
        int head = lines.indexOf("Flag");
        assertThat(lines.subList(head + 1, head + 13))
                .containsExactly(
                        "1",
                        "back left",
                        "22 on · 5 from left(8 from back)",
                        "30",
                        "B blue",
                        "2",
                        "front rightmoved in play at 11:20",
                        "6½ on · 4 from right",
                        "30",
                        "F red",
                        "3",
                        "no hole planned");
        assertThat(lines)
                .contains("Hole locations", "Cut by 06:40: 2; the others as planned · green speed 10 ft")
                .contains("Local rules, product labels and licensed practice come first.")
                .anyMatch(line -> line.startsWith("On: paces from where the line through the hole"))
                .anyMatch(line -> line.endsWith("A pace is 1.000 m. F, M and B stand for front, middle and back."));
        assertThat(lines.subList(0, head)).containsSubsequence("Hole", "Where", "Paces", "Depth");
    }

    @Test
    void rowsAreAsHighAsAPageOfEighteenHasRoomFor() {
        // (297 − 97)/18 = 11.11 mm
        String few = sheet(SmallDay.of(SmallDay.open("", 1, 3).toArray(SheetHole[]::new)));
        assertThat(count(few, "height: 11.11mm;")).isEqualTo(3);
        assertThat(few).doesNotContain("style=\"page-break-before").doesNotContain("class=\"block\"");
    }

    @Test
    void partsAreHeadedAndStayWholeOnAPage() {
        List<SheetHole> nines = Stream.of("A", "B", "C")
                .flatMap(nine -> SmallDay.open(nine, 1, 9).stream())
                .toList();
        String xhtml = sheet(SmallDay.of(nines.toArray(SheetHole[]::new)));
        // two nines with their heads are 20 rows, a third would make 30 where 26 have room: (297 − 97)/20 = 10 mm
        assertThat(count(xhtml, "style=\"page-break-before: always")).isEqualTo(1);
        assertThat(count(xhtml, "height: 10.00mm;")).isEqualTo(30);
        assertThat(SmallDay.lines(xhtml)).contains("A1–A9", "B1–B9", "C1–C9");
        assertThat(xhtml.indexOf("style=\"page-break-before"))
                .isBetween(xhtml.indexOf("B1–B9"), xhtml.indexOf("C1–C9"));
    }

    @Test
    void twentySixRowsHaveRoomOnOnePage() {
        List<SheetHole> holes = new ArrayList<>(SmallDay.open("", 1, 9));
        holes.addAll(SmallDay.open("P", 1, 15));
        List<String> practice =
                SmallDay.open("P", 1, 15).stream().map(SheetHole::hole).toList();
        // 1 + 9 and 1 + 15 rows
        assertThat(sheet(day(holes, CutSoFar.NOTHING, new Loop("", practice, true))))
                .doesNotContain("style=\"page-break-before")
                .contains("height: 7.69mm;"); // 200/26
        holes.addAll(SmallDay.open("P", 16, 16));
        List<String> more =
                SmallDay.open("P", 1, 16).stream().map(SheetHole::hole).toList();
        assertThat(sheet(day(holes, CutSoFar.NOTHING, new Loop("", more, true))))
                .contains("style=\"page-break-before");
    }

    @Test
    void holesOfAPracticeGreenAreChosenOnTheDay() {
        List<SheetHole> holes = new ArrayList<>(SmallDay.open("", 1, 1));
        holes.addAll(SmallDay.open("P", 1, 1));
        holes.add(hole("P2", Optional.of(cut(BACK_LEFT, 1)), Optional.empty()));
        List<String> lines =
                SmallDay.lines(sheet(day(holes, CutSoFar.NOTHING, new Loop("By the barn", List.of("P1", "P2"), true))));
        assertThat(lines)
                .containsSubsequence(
                        "1", "no hole planned", "By the barn", "P1", "chosen on the day", "P2", "back left");
    }

    @Test
    void whatIsWrittenIsEscaped() {
        SheetHole none = hole("1", Optional.empty(), Optional.empty());
        DaySheet day = SmallDay.of(none);
        DaySheet named = new DaySheet(
                "Hill & <Dale>",
                day.date(),
                day.speed(),
                day.soFar(),
                day.holes(),
                day.blocks(),
                day.first(),
                day.policy());
        assertThat(sheet(named)).contains("Hill &amp; &lt;Dale&gt;").doesNotContain("<Dale>");
    }
}
