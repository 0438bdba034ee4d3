package org.cupwright.app.office.green;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.cupwright.app.answers.JudgementText;
import org.cupwright.app.answers.ReasonText;
import org.cupwright.app.answers.ToldPosition;
import org.cupwright.app.desk.plan.PublishPlan;
import org.cupwright.app.session.Role;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.visit.Visit;
import org.cupwright.app.visit.access.Route;
import org.cupwright.app.visit.access.Routes;
import org.cupwright.course.MapPoint;
import org.cupwright.holelocation.Judgement;
import org.cupwright.message.Message;
import org.cupwright.message.Problem;
import org.cupwright.units.Paces;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the page of a green says, and what becomes of what is wanted there. */
class GreenPageTest {
    private static final MapPoint SPOT = new MapPoint(MadeGreen.EAST + 12, MadeGreen.NORTH + 12);
    private static final MapPoint OTHER = new MapPoint(MadeGreen.EAST + 14, MadeGreen.NORTH + 18);

    @TempDir
    private Path folder;

    private MadeGreen made;
    private Visit visit;

    @BeforeEach
    void make() {
        made = new MadeGreen(folder.resolve("data"));
        visit = made.visit(Role.SUPERINTENDENT);
    }

    @AfterEach
    void close() {
        made.close();
    }

    @Test
    void saysWhichGreenAndDayFirst() {
        GreenView.Page page = made.page(visit, "2");
        assertThat(page.title()).isEqualTo("Green 2");
        assertThat(page.spot()).isEmpty();
        assertThat(page.standing()).isEqualTo("Nothing is planned for this day yet.");
        assertThat(page.day()).startsWith("Sat 20 Jun 2026 · green speed ");
        assertThat(page.before()).contains("1");
        assertThat(page.after()).isEmpty();
        assertThat(page.holes()).containsExactly(new GreenView.Link("1", false), new GreenView.Link("2", true));
    }

    @Test
    void namesSpotsToBeginWithWhereNothingIsPlannedOrAsked() {
        SpotView.Part part = made.part(visit, "1", AskedOfGreen.NOTHING);
        assertThat(part.asked()).isEmpty();
        assertThat(part.begin())
                .isNotEmpty()
                .allMatch(one -> one.told().verdict().equals("pass"));
    }

    @Test
    void saysEveryRuleOfTheAskedSpotTheGravestFirst() {
        MapPoint byTheEdge = new MapPoint(MadeGreen.EAST + 1, MadeGreen.NORTH + 9);
        SpotView.Part part = made.part(visit, "1", MadeGreen.at(byTheEdge));
        SpotView.Judged asked = part.asked().orElseThrow();
        assertThat(asked.told().verdict()).isEqualTo("fail");
        assertThat(asked.rules()).hasSize(11);
        assertThat(asked.rules().get(0).name()).isEqualTo("distance from the edge");
        assertThat(asked.rules().get(0).says()).startsWith("1 pace from the edge: nearer than");
        assertThat(part.heard()).isEqualTo(asked.told().where() + ": do not cut · survey");
        SpotView.Judged better = part.better().orElseThrow();
        assertThat(better.told().verdict()).isEqualTo("pass");
        assertThat(better.told().within().orElseThrow()).startsWith("good within ");
    }

    @Test
    void findsTheSameSpotByPaces() {
        SpotView.Judged asked =
                made.part(visit, "1", MadeGreen.at(SPOT)).asked().orElseThrow();
        String[] words = asked.told().where().split(" · ");
        String on = words[1].replace(" on", "").replace("½", ".5");
        String from = words[2].replaceAll(" from .*", "").replace("½", ".5");
        String side = words[2].endsWith("left") ? "L" : "R";
        AskedOfGreen paced = new AskedOfGreen(null, null, null, on, side, from, null, null, null, null);
        assertThat(made.part(visit, "1", paced).asked().orElseThrow().told().where())
                .isEqualTo(asked.told().where());
    }

    @Test
    void holdsOneSpotAgainstAnotherRuleByRule() {
        SpotView.Part part =
                made.part(visit, "1", MadeGreen.asked(null, null, AskedOfGreen.at(OTHER), AskedOfGreen.at(SPOT)));
        assertThat(part.held().orElseThrow().at()).isEqualTo(AskedOfGreen.at(SPOT));
        assertThat(part.asked().orElseThrow().at()).isEqualTo(AskedOfGreen.at(OTHER));
        assertThat(part.compared()).hasSize(11);
        for (SpotView.Compared pair : part.compared()) {
            assertThat(pair.held().name()).isEqualTo(pair.name());
            assertThat(pair.asked().name()).isEqualTo(pair.name());
        }
        assertThat(part.marks()).contains("class=\"held\"", "class=\"asked\"");
    }

    @Test
    void comparesNothingWithItself() {
        SpotView.Part part =
                made.part(visit, "1", MadeGreen.asked(null, null, AskedOfGreen.at(SPOT), AskedOfGreen.at(SPOT)));
        assertThat(part.compared()).isEmpty();
    }

    @Test
    void aSpotThatIsSetIsTheDaysSpot() {
        set(visit, SPOT, 0);
        GreenView.Page page = made.page(visit, "1");
        SpotView.Part part = made.part(visit, "1", AskedOfGreen.NOTHING);
        assertThat(part.asked().orElseThrow().at()).isEqualTo(AskedOfGreen.at(SPOT));
        assertThat(part.asked().orElseThrow().todays()).isTrue();
        assertThat(page.spot()).contains(part.asked().orElseThrow().told().where());
        assertThat(page.standing()).isEqualTo("planned, draft");
        assertThat(part.wishes().days()).extracting(WishView.Day::says).containsExactly("tomorrow");
        assertThat(part.wishes().lock()).isEmpty();
        assertThat(part.wishes().said())
                .containsExactly("Ash asked for " + page.spot().get() + ".");
        assertThat(part.wishes().why()).anyMatch(why -> why.contains("Ash"));
    }

    /** Half a pace is the finest anybody paces: 1.3 paces are one beside the spot, and one among the reasons. */
    @Test
    void howFarOffIsStillGoodIsOneFigureWhereverItIsSaid() {
        set(visit, SPOT, 0);
        StoredHole planned = made.stands(visit, "1").planned().orElseThrow();
        double room = 1.3 * Paces.STANDARD_METRES;
        Judgement judgement = planned.position().judgement();
        JudgedPosition position =
                new JudgedPosition(judgement, planned.position().place(), OptionalDouble.of(room));
        StoredHole hole = new StoredHole(
                "1",
                position,
                false,
                Optional.empty(),
                List.of(Message.of("rotation.reason.room", new Message.Length(room))),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty());
        String within = new JudgementText(visit.texts(), Paces.STANDARD_METRES)
                .told(position)
                .within()
                .orElseThrow();
        assertThat(within).isEqualTo("good within 1 pace");
        ReasonText reasons = new ReasonText(visit.texts(), Paces.STANDARD_METRES);
        assertThat(reasons.all(hole)).containsExactly("Good within 1 pace.");
        assertThat(reasons.besideTheSummary(hole, judgement)).isEmpty();
    }

    /** The spot's own line has how far off is still good and how it plays; its reasons say it no second time. */
    @Test
    void whatTheSummarySaysIsNoReasonBesideIt() {
        set(visit, SPOT, 0);
        SpotView.Part part = made.part(visit, "1", AskedOfGreen.NOTHING);
        assertThat(part.asked().orElseThrow().told().within()).isPresent();
        ToldPosition told = part.asked().orElseThrow().told();
        List<String> why = part.wishes().why();
        assertThat(why).isNotEmpty().noneMatch(one -> one.startsWith("Good "));
        assertThat(why.stream().filter(one -> one.startsWith("Plays ")))
                .hasSizeLessThanOrEqualTo(told.plays().isPresent() ? 0 : 1);
    }

    @Test
    void aSpotIsSetForTheDayThatIsChosen() {
        List<WishView.Day> days =
                made.part(visit, "1", MadeGreen.at(SPOT)).wishes().days();
        assertThat(days).extracting(WishView.Day::says).containsExactly("today", "tomorrow");
        assertThat(days).extracting(WishView.Day::shown).containsExactly(true, false);
        LocalDate tomorrow = MadeGreen.TODAY.plusDays(1);
        String next = made.set(visit, "1", SPOT, tomorrow, 0);
        assertThat(next).startsWith("redirect:/green/1?date=2026-06-21&at=");
        assertThat(made.stands(visit, "1").plan()).isEmpty();
        Visit then = made.visit(Role.SUPERINTENDENT, tomorrow);
        assertThat(made.stands(then, "1").spot()).contains(SPOT);
        assertThat(made.part(then, "1", AskedOfGreen.NOTHING).wishes().days())
                .extracting(WishView.Day::says)
                .containsExactly("today");
        Visit later = made.visit(Role.SUPERINTENDENT, tomorrow.plusDays(1));
        assertThat(made.part(later, "1", MadeGreen.at(OTHER)).wishes().days())
                .extracting(WishView.Day::says)
                .containsExactly("today", "tomorrow", "Mon 22 Jun");
    }

    /** Where the plan has it the hole is locked by a press, exactly where it is planned, and freed again. */
    @Test
    void aHoleIsLockedWhereItIsPlannedAndFreed() {
        set(visit, SPOT, 0);
        made.wishes().free(visit, "1", seen());
        MapPoint planned = made.stands(visit, "1").spot().orElseThrow();
        SpotView.Part part = made.part(visit, "1", AskedOfGreen.NOTHING);
        String lock = part.wishes().lock().orElseThrow();
        made.wishes().set(visit, "1", part.asked().orElseThrow().at(), lock);
        assertThat(made.stands(visit, "1").spot()).contains(planned);
        assertThat(made.stands(visit, "1").planned().orElseThrow().locked()).isTrue();
        WishView.Wishes locked = made.part(visit, "1", AskedOfGreen.NOTHING).wishes();
        assertThat(locked.lock()).isEmpty();
        assertThat(locked.said()).hasSize(1);
        assertThat(made.part(made.visit(Role.CHANGER), "1", AskedOfGreen.NOTHING)
                        .wishes()
                        .lock())
                .isEmpty();
    }

    @Test
    void aSpotIsNotSetForWhoHasSeenAnotherPlan() {
        set(visit, SPOT, 0);
        long seen = made.stands(visit, "1").number();
        set(visit, OTHER, seen);
        assertThatThrownBy(() -> set(visit, SPOT, seen))
                .isInstanceOfSatisfying(
                        Problem.class, one -> assertThat(one.what().key()).isEqualTo("problem.plansChanged"));
        assertThatThrownBy(() -> set(visit, SPOT, 0)).isInstanceOf(Problem.class);
        assertThat(made.stands(visit, "1").spot()).contains(OTHER);
    }

    @Test
    void aHoleIsKeptOffGroundAndFreedAgain() {
        set(visit, SPOT, 0);
        HoleWishController wishes = made.wishes();
        wishes.keepOff(visit, "1", AskedOfGreen.at(SPOT), "3", seen());
        assertThat(made.stands(visit, "1").spot().orElseThrow().distanceMetres(SPOT))
                .isGreaterThan(3 * 0.914);
        assertThat(made.part(visit, "1", AskedOfGreen.NOTHING).wishes().said())
                .singleElement()
                .asString()
                .startsWith("Kept off: 3 paces about ");
        wishes.free(visit, "1", seen());
        assertThat(made.part(visit, "1", AskedOfGreen.NOTHING).wishes().said()).isEmpty();
    }

    @Test
    void aPublishedPlanStandsAndThePageSaysHowToWithdrawIt() {
        set(visit, SPOT, 0);
        new PublishPlan(visit.session())
                .take(PublishPlan.Step.PUBLISH, visit.question().date(), true);
        WishView.Wishes wishes = made.part(visit, "1", MadeGreen.at(OTHER)).wishes();
        assertThat(wishes.published()).isTrue();
        assertThat(wishes.may()).isFalse();
        assertThatThrownBy(() -> set(visit, OTHER, seen()))
                .isInstanceOfSatisfying(
                        Problem.class, one -> assertThat(one.what().key()).isEqualTo("problem.planPublished"));
    }

    @Test
    void whoMayNotPlanSeesNoButtonsAndIsRefused() {
        for (Role role : List.of(Role.CHANGER, Role.READER)) {
            Visit other = made.visit(role);
            assertThat(made.part(other, "1", MadeGreen.at(SPOT)).wishes().may()).isFalse();
            assertThatThrownBy(() -> set(other, SPOT, 0))
                    .isInstanceOfSatisfying(
                            Problem.class, one -> assertThat(one.what().key()).isEqualTo("problem.notAllowed"));
        }
        assertThat(made.part(made.visit(Role.OFFICIAL), "1", MadeGreen.at(SPOT))
                        .wishes()
                        .may())
                .isTrue();
    }

    @Test
    void theTableOfAddressesSaysWhoMay() {
        assertThat(roles("GET", "/green/{hole}")).isEqualTo(Set.of(Role.values()));
        assertThat(roles("GET", "/green/{hole}/spot")).isEqualTo(Set.of(Role.values()));
        for (String plans : List.of("set", "keep-off", "free")) {
            assertThat(roles("POST", "/green/{hole}/" + plans)).isEqualTo(Set.of(Role.SUPERINTENDENT, Role.OFFICIAL));
        }
        assertThat(roles("POST", "/green/{hole}/ground"))
                .isEqualTo(Set.of(Role.SUPERINTENDENT, Role.OFFICIAL, Role.CHANGER));
        assertThat(roles("POST", "/green/{hole}/level")).isEqualTo(Set.of(Role.SUPERINTENDENT, Role.CHANGER));
    }

    private static Set<Role> roles(String method, String pattern) {
        return Routes.ALL.stream()
                .filter(route ->
                        route.method().equals(method) && route.pattern().equals(pattern))
                .map(Route::roles)
                .flatMap(Set::stream)
                .collect(Collectors.toSet());
    }

    private long seen() {
        return made.stands(visit, "1").number();
    }

    private void set(Visit who, MapPoint at, long seen) {
        made.set(who, "1", at, MadeGreen.TODAY, seen);
    }
}
