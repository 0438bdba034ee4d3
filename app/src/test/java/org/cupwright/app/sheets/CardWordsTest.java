package org.cupwright.app.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.app.sheets.SmallDay.BACK_LEFT;
import static org.cupwright.app.sheets.SmallDay.FRONT_RIGHT;
import static org.cupwright.app.sheets.SmallDay.TEXTS;
import static org.cupwright.app.sheets.SmallDay.cut;
import static org.cupwright.app.sheets.SmallDay.hole;
import static org.cupwright.app.sheets.SmallDay.paced;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cupwright.app.desk.paper.PaperPolicy;
import org.cupwright.app.desk.plan.CutSoFar;
import org.cupwright.course.Loop;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Mark;
import org.cupwright.cupchange.CupWork.Across;
import org.cupwright.cupchange.CupWork.CutSomewhere;
import org.cupwright.cupchange.CupWork.Depth;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.Policy;
import org.cupwright.settingout.FromMark;
import org.cupwright.settingout.Leeway;
import org.cupwright.settingout.Way;
import org.junit.jupiter.api.Test;

/** What the changer's card says, read from its markup. */
class CardWordsTest {
    private static List<String> card(DaySheet day) {
        return SmallDay.lines(new ChangersCard(TEXTS).xhtml(day));
    }

    private static List<String> card(SheetHole... holes) {
        return card(SmallDay.of(holes));
    }

    private static List<String> card(Policy policy, List<String> first, SheetHole... holes) {
        return card(SmallDay.of(List.of(holes), List.of(), CutSoFar.NOTHING, first, policy));
    }

    /** The lines from the hole's own on, up to where it is filled in. */
    private static List<String> ofHole(SheetHole hole) {
        List<String> lines = card(hole);
        int from = lines.lastIndexOf("Something odd? Ring:");
        while (!lines.get(from).startsWith(hole.hole())) {
            from++;
        }
        int to = from;
        while (!lines.get(to).startsWith("soil:")) {
            to++;
        }
        return lines.subList(from, to);
    }

    private static int count(String xhtml, String part) {
        return xhtml.split(part, -1).length - 1;
    }

    @Test
    void aHoleHasWhereItIsHowFarOffIsGoodAndWhatIsToBeFilled() {
        assertThat(ofHole(hole("7", Optional.of(cut(BACK_LEFT, 1.5)), Optional.of(FRONT_RIGHT))))
                .containsExactly(
                        "7back left",
                        "22 on · 5 from left",
                        "B bluegood within 1½ paces · 8 from back",
                        "Plug: front right · 6½ on · 4 from right",
                        "as planned moved to");
        assertThat(ofHole(hole("7", Optional.of(cut(FRONT_RIGHT, 0)), Optional.empty(), "An invented notice.")))
                .containsExactly(
                        "7front right",
                        "6½ on · 4 from right",
                        "F redgood just there",
                        "Plug: yesterday's hole, not on record",
                        "An invented notice.",
                        "as planned moved to");
    }

    @Test
    void aHoleThatIsNotPlannedOrPlayedElsewhereSaysSo() {
        assertThat(ofHole(SmallDay.rough("7", new CutSomewhere(Depth.BACK, Optional.of(Across.RIGHT)))))
                .containsExactly("7no hole planned", "Plug: back right (roughly)", "as planned moved to");
        assertThat(ofHole(SmallDay.temporary("7", cut(BACK_LEFT, 1), Optional.of(FRONT_RIGHT))))
                .containsExactly(
                        "7temporary green",
                        "Old hole to fill here, if it is still open: front right · 6½ on · 4 from right",
                        "old hole filled");
        assertThat(ofHole(SmallDay.temporary("7", cut(BACK_LEFT, 1), Optional.empty())))
                .contains("Old hole to fill here, if it is still open: place not on record");
    }

    private static SheetHole.Cut unusual(
            SheetHole.Cut cut, boolean onePlace, Verdict verdict, boolean checked, Optional<PersonsOpinion> word) {
        return new SheetHole.Cut(
                cut.directions(), Optional.of(paced(FRONT_RIGHT)), onePlace, verdict, checked, Set.of(), word);
    }

    private static PersonsOpinion said(PersonsOpinion.Kind kind, Optional<String> person) {
        return new PersonsOpinion(kind, Optional.empty(), person, Optional.empty());
    }

    @Test
    void whatIsOutOfTheUsualIsSaidOfAHole() {
        Mark head = new Mark(Mark.Kind.SPRINKLER_HEAD, "head 7-1", new MapPoint(0, 0));
        Mark other = new Mark(Mark.Kind.SPRINKLER_HEAD, "head 7-2", new MapPoint(0, 9));
        FromMark way = new FromMark(head, 12.5, 12.5, Optional.empty(), Optional.of(other));
        Leeway little = new Leeway(0.2, 0, Optional.of(Way.TO_THE_LEFT));
        SheetHole.Cut cut = cut(Optional.of(paced(BACK_LEFT)), Optional.of(way), Optional.of(little));
        Optional<PersonsOpinion> usual = Optional.of(said(PersonsOpinion.Kind.USUAL, Optional.of("Ida")));
        assertThat(ofHole(hole("7", Optional.of(unusual(cut, false, Verdict.CAUTION, false, usual)), Optional.empty())))
                .containsExactly(
                        "7back left",
                        "22 on · 5 from left",
                        "B bluejust there, more room to the left · 8 from back",
                        "With room: front right · 6½ on · 4 from right",
                        "Plug: yesterday's hole, not on record",
                        "The paces fit more than one place: 12½ paces from head 7-1 towards head 7-2",
                        "slope not checked",
                        "said to be good by Ida",
                        "as planned moved to");
    }

    @Test
    void withoutALineOfPlayTheMarkOrTheDrawingLeadsThere() {
        Mark head = new Mark(Mark.Kind.SPRINKLER_HEAD, "head 7-1", new MapPoint(0, 0));
        FromMark way = new FromMark(head, 3, 3, Optional.empty(), Optional.empty());
        Optional<PersonsOpinion> usual = Optional.of(said(PersonsOpinion.Kind.USUAL, Optional.empty()));
        SheetHole.Cut marked = cut(Optional.empty(), Optional.of(way), Optional.empty());
        assertThat(ofHole(hole("7", Optional.of(unusual(marked, false, Verdict.PASS, true, usual)), Optional.empty())))
                .contains("No line of play, so no paces: 3 paces from head 7-1, see the drawing", "said to be good")
                .doesNotContain("slope not checked");
        SheetHole.Cut drawn = cut(Optional.empty(), Optional.empty(), Optional.empty());
        assertThat(ofHole(hole(
                        "7",
                        Optional.of(unusual(drawn, false, Verdict.PASS, true, Optional.empty())),
                        Optional.empty())))
                .contains("No line of play, so no paces: see the drawing")
                .doesNotContain("said to be good");
    }

    @Test
    void flagsAreCountedToLoad() {
        SheetHole back = hole("1", Optional.of(cut(BACK_LEFT, 1)), Optional.empty());
        SheetHole alsoBack = hole("2", Optional.of(cut(BACK_LEFT, 1)), Optional.empty());
        SheetHole front = hole("3", Optional.of(cut(FRONT_RIGHT, 1)), Optional.empty());
        SheetHole unknown =
                hole("4", Optional.of(cut(Optional.empty(), Optional.empty(), Optional.empty())), Optional.empty());
        SheetHole none = hole("5", Optional.empty(), Optional.empty());
        assertThat(card(back, alsoBack, front, none)).contains("1 × F red · 0 × M white · 2 × B blue");
        assertThat(card(back, unknown, none)).contains("0 × F red · 0 × M white · 1 × B blue · 1 as the green asks");
        assertThat(card(SmallDay.policy().with(PaperPolicy.FLAG_BACK, ""), List.of(), back))
                .contains("0 × F red · 0 × M white · 1 × B");
    }

    @Test
    void theShedQuarterHasTheCoursesOwnAnswers() {
        List<String> usual = card(hole("1", Optional.empty(), Optional.empty()));
        assertThat(usual)
                .contains(
                        "Planned · green speed 10 ft",
                        "Mown first? If not, ask before you cut.",
                        "Cut in one piece.",
                        "Do not white the rim.",
                        "Ball marks are mended by: whoever changes the hole.",
                        "Something odd? Ring:",
                        "Plug: where yesterday's hole is, to be filled.")
                .noneMatch(line -> line.startsWith("Turf for repairs"))
                .anyMatch(line -> line.startsWith("On: paces from where the line through the hole"));
        Policy own = SmallDay.policy()
                .with(PaperPolicy.MOWN_FIRST, false)
                .with(PaperPolicy.TWO_PIECE, true)
                .with(PaperPolicy.WHITE_RIM, true)
                .with(PaperPolicy.NURSERY, "behind the barn")
                .with(PaperPolicy.RING, "the shed")
                .with(PaperPolicy.TICK_LIST, "long board,, chalk ");
        List<String> lines = card(own, List.of(), hole("1", Optional.empty(), Optional.empty()));
        assertThat(lines)
                .contains(
                        "Cut whether it is mown or not.",
                        "Cut in two pieces: the upper half to the bucket.",
                        "White the rim.",
                        "Turf for repairs: behind the barn.",
                        "Something odd? Ring the shed.");
        int ticks = lines.indexOf("Before leaving the shed");
        assertThat(lines.subList(ticks + 1, ticks + 4)).containsExactly("long board", "chalk", "Here we do it so");
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

    @Test
    void whereTheHolesAreIsSaidOnTop() {
        SheetHole none = hole("1", Optional.empty(), Optional.empty());
        LocalTime time = LocalTime.of(6, 40);
        CutSoFar partly = new CutSoFar(List.of("1", "2"), Optional.of(time), false, Map.of());
        CutSoFar all = new CutSoFar(List.of("1"), Optional.of(time), true, Map.of());
        assertThat(card(SmallDay.of(List.of(none), List.of(), partly, List.of(), SmallDay.policy())))
                .anyMatch(line -> line.startsWith("Cut by 06:40: 1, 2; the others as planned · "));
        assertThat(card(SmallDay.of(List.of(none), List.of(), all, List.of(), SmallDay.policy())))
                .anyMatch(line -> line.startsWith("As cut at 06:40 · "));
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
