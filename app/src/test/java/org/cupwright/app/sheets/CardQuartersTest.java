package org.cupwright.app.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.app.sheets.SmallDay.BACK_LEFT;
import static org.cupwright.app.sheets.SmallDay.FRONT_RIGHT;
import static org.cupwright.app.sheets.SmallDay.TEXTS;
import static org.cupwright.app.sheets.SmallDay.card;
import static org.cupwright.app.sheets.SmallDay.cut;
import static org.cupwright.app.sheets.SmallDay.hole;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.app.desk.plan.CutSoFar;
import org.cupwright.course.Loop;
import org.junit.jupiter.api.Test;

/** How the changer's card is shared out over quarters, read from its markup. */
class CardQuartersTest {
    private static int count(String xhtml, String part) {
        return xhtml.split(part, -1).length - 1;
    }

    @Test
    void notesFillWhatIsLeftOfAnEvenNumberOfQuarters() {
        String three = new ChangersCard(TEXTS)
                .xhtml(SmallDay.of(SmallDay.open("", 1, 3).toArray(SheetHole[]::new)));
        assertThat(count(three, "class=\"side\"")).isEqualTo(1);
        assertThat(count(three, "class=\"quarter\"")).isEqualTo(4);
        assertThat(count(three, "class=\"ruled\"")).isEqualTo(14);
        assertThat(SmallDay.lines(three)).filteredOn("Notes"::equals).hasSize(1);
        assertThat(SmallDay.lines(three)).filteredOn("The hand work"::equals).hasSize(1);
        String eighteen = new ChangersCard(TEXTS)
                .xhtml(SmallDay.of(SmallDay.open("", 1, 18).toArray(SheetHole[]::new)));
        assertThat(count(eighteen, "class=\"side\"")).isEqualTo(2);
        assertThat(count(eighteen, "class=\"ruled\"")).isZero();
        // the last side has all cautions, the first says the one in short
        assertThat(count(eighteen, "class=\"local\"")).isEqualTo(1);
        assertThat(count(three, "class=\"local\"")).isZero();
    }

    @Test
    void quartersAndFoldsStandWhereThePaperIsFolded() {
        String a4 = new ChangersCard(TEXTS)
                .xhtml(SmallDay.of(SmallDay.open("", 1, 3).toArray(SheetHole[]::new)));
        assertThat(a4)
                .contains("class=\"side\" style=\"width: 210.00mm; height: 296.80mm;\"")
                .contains("class=\"quarter\" style=\"width: 105.00mm; height: 148.50mm; left: 0.00mm; top: 0.00mm;\"")
                .contains("class=\"quarter\" style=\"width: 105.00mm; height: 148.50mm; left: 105.00mm; top: 0.00mm;\"")
                .contains("class=\"quarter\" style=\"width: 105.00mm; height: 148.50mm; left: 0.00mm; top: 148.50mm;\"")
                .contains(
                        "class=\"quarter\" style=\"width: 105.00mm; height: 148.50mm; left: 105.00mm; top: 148.50mm;\"")
                .contains("class=\"fold down\" style=\"left: 105.00mm; height: 297.00mm;\"")
                .contains("class=\"fold across\" style=\"top: 148.50mm; width: 210.00mm;\"")
                // (148.5 − 23)/3 mm for each of three holes, its drawing 2.6 mm lower
                .contains("class=\"one\" style=\"min-height: 41.83mm;\"")
                .contains("class=\"drawing\" style=\"width: 34.00mm; height: 39.23mm;\"")
                .contains("<svg style=\"width: 34.00mm; height: 39.23mm;\" ");
    }

    @Test
    void moreThanEighteenHolesAreOnSeveralCardsWithWholeNines() {
        List<SheetHole> holes = Stream.of("A", "B", "C")
                .flatMap(nine -> SmallDay.open(nine, 1, 9).stream())
                .toList();
        List<String> lines = card(SmallDay.of(holes.toArray(SheetHole[]::new)));
        assertThat(lines).filteredOn("Changer's card"::equals).hasSize(2);
        assertThat(lines).filteredOn("The hand work"::equals).hasSize(2);
        int second = lines.lastIndexOf("Changer's card");
        assertThat(lines.subList(0, second)).contains("A1no hole planned", "B9no hole planned");
        assertThat(lines.subList(second, lines.size()))
                .contains("C1no hole planned")
                .doesNotContain("B9no hole planned");
        assertThat(lines).anyMatch(line -> line.endsWith("Invented · A1–A9"));
    }

    @Test
    void aHoleWithManyNoticesTakesTheRoomOfOthers() {
        String notice = "An invented notice that is as long as two lines of the card, so that three of them need room.";
        SheetHole first = hole("1", Optional.empty(), Optional.empty(), notice, notice, notice, notice, notice);
        List<SheetHole> holes = new ArrayList<>(List.of(first));
        holes.addAll(SmallDay.open("", 2, 3));
        String xhtml = new ChangersCard(TEXTS).xhtml(SmallDay.of(holes.toArray(SheetHole[]::new)));
        // shed, two quarters of holes, hand work: no room for notes
        assertThat(count(xhtml, "class=\"quarter\"")).isEqualTo(4);
        assertThat(count(xhtml, "class=\"ruled\"")).isZero();
    }

    @Test
    void noticesThatDoNotFitGoOnOverAQuarterOfTheirOwn() {
        List<String> few = List.of("Storm: an invented notice at 14:30 today.");
        SheetHole none = hole("1", Optional.empty(), Optional.empty());
        assertThat(card(SmallDay.policy(), few, none))
                .filteredOn("Know first"::equals)
                .hasSize(1);
        assertThat(new ChangersCard(TEXTS)
                        .xhtml(SmallDay.of(List.of(none), List.of(), CutSoFar.NOTHING, few, SmallDay.policy())))
                .contains("<span class=\"whole\">14:30</span>")
                .contains("<span class=\"word\">today.</span>");
        List<String> many = Collections.nCopies(12, few.get(0) + " It goes on and on for more than one line of it.");
        List<String> lines = card(SmallDay.policy(), many, none);
        assertThat(lines).filteredOn("Know first"::equals).hasSize(2);
        assertThat(lines).filteredOn(line -> line.startsWith("Storm")).hasSize(12);
    }

    private static List<String> practice(SheetHole one, SheetHole two, int holes) {
        List<SheetHole> all = new ArrayList<>(SmallDay.open("", 1, holes));
        all.add(one);
        all.add(two);
        Loop green = new Loop("By the barn", List.of("P1", "P2"), true);
        return card(SmallDay.of(all, List.of(green), CutSoFar.NOTHING, List.of(), SmallDay.policy()));
    }

    @Test
    void aPracticeGreenHasAQuarterWhereOneIsLeft() {
        SheetHole old = hole("P1", Optional.empty(), Optional.of(BACK_LEFT));
        SheetHole unknown = hole("P2", Optional.empty(), Optional.empty());
        List<String> lines = practice(old, unknown, 3);
        assertThat(lines)
                .contains(
                        "By the barn: 2 holes, yours to choose, away from the plugs:"
                                + " P1 22 on · 5 from left; P2 place not on record",
                        "Keep away from the old holes and plugs.",
                        "P1 on, from side",
                        "P2 on, from side");
        assertThat(practice(unknown, hole("P1", Optional.empty(), Optional.empty()), 3))
                .contains("By the barn: 2 holes, yours to choose; no old hole is on record.");
    }

    @Test
    void aPracticeGreenIsSaidInShortWhereNoQuarterIsLeft() {
        SheetHole cut = hole("P1", Optional.of(cut(FRONT_RIGHT, 1)), Optional.of(BACK_LEFT));
        SheetHole unknown = hole("P2", Optional.empty(), Optional.empty());
        List<String> lines = practice(cut, unknown, 18);
        String now = "By the barn: 2 holes, yours to choose, now: P1 6½ on · 4 from right; P2 place not on record";
        assertThat(lines).contains(now).doesNotContain("P1 on, from side");
        assertThat(lines.indexOf(now)).isGreaterThan(lines.indexOf("The hand work"));
    }
}
