package org.cupwright.app.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.app.sheets.SmallDay.BACK_LEFT;
import static org.cupwright.app.sheets.SmallDay.FRONT_RIGHT;
import static org.cupwright.app.sheets.SmallDay.card;
import static org.cupwright.app.sheets.SmallDay.cut;
import static org.cupwright.app.sheets.SmallDay.hole;
import static org.cupwright.app.sheets.SmallDay.paced;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.desk.paper.PaperPolicy;
import org.cupwright.app.desk.paper.RimWhited;
import org.cupwright.app.desk.plan.CutSoFar;
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

    /** Where nothing is changed there is nothing to tick but that it was moved, and its flag stands already. */
    @Test
    void aHoleThatStaysHasNothingToFillInButAMove() {
        SheetHole stays = SmallDay.staying("7", cut(BACK_LEFT, 1.5), LocalDate.of(2026, 6, 19));
        List<String> lines = card(stays, hole("8", Optional.of(cut(FRONT_RIGHT, 1)), Optional.empty()));
        int from = lines.indexOf("7back left");
        assertThat(lines.subList(from, from + 5))
                .containsExactly(
                        "7back left",
                        "22 on · 5 from left",
                        "B bluegood within 1½ paces · 8 from back",
                        "Stays as cut on Fri 19 Jun 2026: nothing to change today.",
                        "moved to at");
        assertThat(lines.get(from + 5)).isEqualTo("8front right");
        assertThat(lines).anyMatch(line -> line.contains("1 × F red") && line.contains("0 × B blue"));
        assertThat(card(stays)).contains("none: every hole stays");
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
                .with(PaperPolicy.WHITE_RIM, RimWhited.ALWAYS)
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
}
