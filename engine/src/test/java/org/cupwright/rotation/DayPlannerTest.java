package org.cupwright.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.Third;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Translated;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.rotation.candidate.Wishes;
import org.cupwright.rotation.candidate.Wishes.Circle;
import org.cupwright.rotation.counting.Parts;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/** Invented greens of thirty metres, front at north 0, left at east 0. */
class DayPlannerTest {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);
    private static final Candidate FRONT = MadeGreens.in(Third.FRONT);
    private static final Candidate MIDDLE = MadeGreens.in(Third.MIDDLE);
    private static final Candidate BACK = MadeGreens.in(Third.BACK);

    @Test
    void eighteenGreensAreSixSixSix() {
        DayPlan plan = plan(greens(18, FRONT, MIDDLE, BACK));
        assertThat(plan.totals().thirds()).isEqualTo(new Parts(6, 6, 6));
        assertThat(plan.thirdsOff()).isZero();
    }

    @Test
    void oneNineAndTwentySevenGreensAreEvenToo() {
        assertThat(plan(greens(1, FRONT, MIDDLE, BACK)).thirdsOff()).isZero();
        assertThat(plan(greens(9, FRONT, MIDDLE, BACK)).totals().thirds()).isEqualTo(new Parts(3, 3, 3));
        assertThat(plan(greens(27, FRONT, MIDDLE, BACK)).totals().thirds()).isEqualTo(new Parts(9, 9, 9));
    }

    @Test
    void noGreensIsAnEmptyPlan() {
        DayPlan plan = plan(List.of());
        assertThat(plan.holes()).isEmpty();
        assertThat(plan.findings()).isEmpty();
    }

    @Test
    void namesTheThirdThatTooFewGreensOffer() {
        List<GreenCandidates> greens = new ArrayList<>(greens(14, FRONT, MIDDLE));
        for (int i = 15; i <= 18; i++) {
            greens.add(MadeGreens.green("" + i, FRONT, MIDDLE, BACK));
        }
        DayPlan plan = plan(greens);
        assertThat(plan.thirdsOff()).isEqualTo(2);
        assertThat(plan.totals().thirds().third()).isEqualTo(4);
        assertThat(plan.findings())
                .contains(Message.of(
                        "rotation.finding.tooFewGreensOffer",
                        new Translated("third.back"),
                        new Count(4),
                        new Count(6)));
    }

    @Test
    void namesTheThirdThatTooManyGreensAreBoundTo() {
        List<GreenCandidates> greens = new ArrayList<>(greens(7, FRONT));
        for (int i = 8; i <= 18; i++) {
            greens.add(MadeGreens.green("" + i, MIDDLE, BACK));
        }
        DayPlan plan = plan(greens);
        assertThat(plan.thirdsOff()).isEqualTo(1);
        assertThat(plan.findings())
                .contains(Message.of(
                        "rotation.finding.tooManyGreensOfferOnly",
                        new Translated("third.front"),
                        new Count(7),
                        new Count(6)));
    }

    /** Of six, six and six: four greens have the back only, six the front, eight the middle. */
    @Test
    void aThirdThatJustEnoughGreensOfferIsNotNamed() {
        List<GreenCandidates> greens = new ArrayList<>();
        for (int i = 1; i <= 18; i++) {
            greens.add(MadeGreens.green("" + i, i <= 4 ? BACK : i <= 10 ? FRONT : MIDDLE));
        }
        assertThat(plan(greens).findings())
                .filteredOn(finding -> finding.key().contains("GreensOffer"))
                .containsExactlyInAnyOrder(
                        Message.of(
                                "rotation.finding.tooFewGreensOffer",
                                new Translated("third.back"),
                                new Count(4),
                                new Count(6)),
                        Message.of(
                                "rotation.finding.tooManyGreensOfferOnly",
                                new Translated("third.middle"),
                                new Count(8),
                                new Count(6)));
    }

    @Test
    void aFreeSchemeAsksForNoThirds() {
        Policy free = Policy.defaults().with(RotationPolicy.SCHEME, Scheme.FREE);
        List<GreenCandidates> greens = new ArrayList<>();
        for (int i = 1; i <= 9; i++) {
            greens.add(new GreenCandidates(
                    "" + i, List.of(FRONT, MIDDLE, BACK), Optional.of(new MapPoint(15, 28)), Wishes.none()));
        }
        DayPlan plan = new DayPlanner(free).plan(DayRequest.of(DAY, greens));
        assertThat(plan.totals().thirds().third()).isZero();
        assertThat(plan.thirdsOff()).isZero();
    }

    @Test
    void thirdsTheCourseLeavesOutAreUsedOnlyWhereThereIsNothingElse() {
        Policy noBack = Policy.defaults().with(RotationPolicy.THIRDS_ALLOWED, List.of(Third.FRONT, Third.MIDDLE));
        List<GreenCandidates> greens = new ArrayList<>(greens(8, FRONT, MIDDLE, BACK));
        assertThat(new DayPlanner(noBack)
                        .plan(DayRequest.of(DAY, greens))
                        .totals()
                        .thirds())
                .isEqualTo(new Parts(4, 4, 0));
        greens.add(MadeGreens.green("9", BACK));
        assertThat(new DayPlanner(noBack).plan(DayRequest.of(DAY, greens)).findings())
                .contains(Message.of("rotation.finding.thirdNotAllowed", new Name("9")));
    }

    @Test
    void greensWithoutALineOfPlayAreLeftOutOfTheBalanceAndNamed() {
        Candidate nowhere = MadeGreens.candidate(15, 15, Verdict.PASS, Optional.of(DifficultyClass.MEDIUM), false, 3);
        List<GreenCandidates> greens = new ArrayList<>(greens(6, FRONT, MIDDLE, BACK));
        greens.add(MadeGreens.green("P", nowhere));
        DayPlan plan = plan(greens);
        assertThat(plan.totals().thirds()).isEqualTo(new Parts(2, 2, 2));
        assertThat(plan.findings()).contains(Message.of("rotation.finding.noLineOfPlay", new Name("P")));
        assertThat(plan.find("P").orElseThrow().reasons()).contains(Message.of("rotation.reason.noLineOfPlay"));
    }

    @Test
    void unknownDifficultyIsLeftOutOfTheBalanceAndNamed() {
        Candidate unknown = MadeGreens.candidate(15, 15, Verdict.PASS, Optional.empty(), true, 3);
        DayPlan plan = plan(List.of(MadeGreens.green("1", unknown)));
        assertThat(plan.totals().difficulties().total()).isZero();
        assertThat(plan.findings()).contains(Message.of("rotation.finding.difficultyUnknown", new Name("1")));
    }

    @Test
    void closedAndUnusableGreensAreLeftOutAndNamed() {
        Candidate failing = MadeGreens.candidate(15, 15, Verdict.FAIL, Optional.empty(), true, 0);
        DayPlan plan = plan(List.of(
                new GreenCandidates("1", List.of(FRONT), Optional.empty(), Wishes.greenClosed()),
                MadeGreens.green("2", failing),
                forbidden("3", FRONT),
                MadeGreens.green("4", BACK)));
        assertThat(plan.holes()).extracting(PlannedHole::hole).containsExactly("4");
        assertThat(plan.findings())
                .contains(
                        Message.of("rotation.finding.closed", new Name("1")),
                        Message.of("rotation.finding.nothingUsable", new Name("2")),
                        Message.of("rotation.finding.allForbidden", new Name("3")));
    }

    private static GreenCandidates forbidden(String hole, Candidate only) {
        Wishes wishes = new Wishes(Optional.empty(), List.of(new Circle(only.at(), 1)), false);
        return new GreenCandidates(hole, List.of(only), Optional.empty(), wishes);
    }

    /** Of two spots of one kind that differ in nothing else, the one of which a person says that holes go there. */
    @Test
    void whereNobodyMeasuredASpotSaidToBeGoodIsPreferred() {
        Candidate unsaid = MadeGreens.in(Third.FRONT);
        Candidate usual = MadeGreens.said(MadeGreens.good(16, 6, DifficultyClass.MEDIUM), PersonsOpinion.Kind.USUAL);
        DayPlan plan = plan(List.of(MadeGreens.green("1", unsaid, usual)));
        assertThat(plan.find("1").orElseThrow().candidate()).isEqualTo(usual);
        assertThat(plan.find("1").orElseThrow().reasons()).startsWith(Message.of("rule.drawnGround.notChecked"));
        assertThat(plan.terms()).containsEntry(Term.NOT_VOUCHED_FOR, 0.0);
        assertThat(plan(List.of(MadeGreens.green("1", unsaid))).terms()).containsEntry(Term.NOT_VOUCHED_FOR, 1.0);
    }

    @Test
    void aLockIsKeptAndCounted() {
        Candidate care = MadeGreens.candidate(15, 25, Verdict.CAUTION, Optional.empty(), true, 0);
        List<GreenCandidates> greens = new ArrayList<>(greens(2, FRONT, MIDDLE, BACK));
        greens.add(new GreenCandidates(
                "3", List.of(FRONT, MIDDLE), Optional.empty(), new Wishes(Optional.of(care), List.of(), false)));
        DayPlan plan = plan(greens);
        PlannedHole third = plan.find("3").orElseThrow();
        assertThat(third.candidate()).isEqualTo(care);
        assertThat(third.locked()).isTrue();
        assertThat(third.alternative()).isEmpty();
        assertThat(third.reasons()).startsWith(Message.of("rotation.reason.locked"));
        assertThat(plan.totals().thirds()).isEqualTo(new Parts(1, 1, 1));
    }

    @Test
    void aLockTheRulesRefuseIsReported() {
        Candidate failing = MadeGreens.candidate(15, 25, Verdict.FAIL, Optional.empty(), true, 0);
        DayPlan plan = plan(List.of(new GreenCandidates(
                "1", List.of(FRONT), Optional.empty(), new Wishes(Optional.of(failing), List.of(), false))));
        assertThat(plan.findings()).contains(Message.of("rotation.finding.lockedNotUsable", new Name("1")));
        assertThat(plan.find("1").orElseThrow().reasons())
                .contains(Message.of(
                        "rotation.reason.failsMeasured",
                        new Translated("rule." + RuleId.EDGE.id()),
                        new Length(5),
                        new Length(3.66)));
    }

    @Test
    void savedGroundIsUsedOnlyWhereThereIsNothingElse() {
        Candidate saved = new Candidate(BACK.judgement(), BACK.place(), 3, true);
        Candidate care = MadeGreens.candidate(15, 5, Verdict.CAUTION, Optional.empty(), true, 0);
        DayPlan plan = plan(List.of(MadeGreens.green("1", saved, care), MadeGreens.green("2", saved)));
        assertThat(plan.find("1").orElseThrow().candidate()).isEqualTo(care);
        assertThat(plan.findings())
                .contains(Message.of("rotation.finding.savedGroundUsed", new Name("2")))
                .doesNotContain(Message.of("rotation.finding.savedGroundUsed", new Name("1")));
    }

    @Test
    void busyDaysAreEasier() {
        Candidate[] all = Stream.of(DifficultyClass.values())
                .map(rank -> MadeGreens.good(15, 15, rank))
                .toArray(Candidate[]::new);
        DayRequest busy = new DayRequest(DAY, greens(18, all), List.of(), true, 1);
        Policy free = Policy.defaults().with(RotationPolicy.SCHEME, Scheme.FREE);
        assertThat(new DayPlanner(free).plan(busy).totals().difficulties()).isEqualTo(new Parts(9, 6, 3));
        assertThat(new DayPlanner(free)
                        .plan(DayRequest.of(DAY, greens(18, all)))
                        .totals()
                        .difficulties())
                .isEqualTo(new Parts(6, 6, 6));
    }

    @Test
    void theAlternativeSaysWhatItWouldHaveBroken() {
        DayPlan plan = plan(greens(3, FRONT, MIDDLE, BACK));
        Alternative other = plan.holes().get(0).alternative().orElseThrow();
        assertThat(other.whyNot()).extracting(Message::key).containsExactly("rotation.whyNot.thirds");
    }

    @Test
    void theSeedDecidesOnlyBetweenEquallyGoodPlans() {
        List<GreenCandidates> greens = MadeGreens.random(new Random(Suite.seed()), 6, 20);
        List<GreenCandidates> alike = greens(9, FRONT, MIDDLE, BACK);
        Set<List<PlannedHole>> seen = new HashSet<>();
        double points = DayPlannerAgainstReferenceTest.points(plan(greens));
        for (long seed = 1; seed <= 20; seed++) {
            DayPlan plan = new DayPlanner(Policy.defaults()).plan(new DayRequest(DAY, greens, List.of(), false, seed));
            assertThat(DayPlannerAgainstReferenceTest.points(plan)).isEqualTo(points, within(0.01));
            seen.add(new DayPlanner(Policy.defaults())
                    .plan(new DayRequest(DAY, alike, List.of(), false, seed))
                    .holes());
        }
        assertThat(seen).hasSizeGreaterThan(5);
    }

    @Test
    void equalRequestsHaveEqualPlansWhateverTheOrderOfCandidates() {
        Random random = new Random(Suite.seed());
        List<GreenCandidates> greens = MadeGreens.random(random, 9, 40);
        DayPlan plan = plan(greens);
        assertThat(plan(greens)).isEqualTo(plan);
        List<GreenCandidates> shuffled = greens.stream()
                .map(green -> {
                    List<Candidate> candidates = new ArrayList<>(green.candidates());
                    Collections.shuffle(candidates, random);
                    return new GreenCandidates(green.hole(), candidates, green.yesterday(), green.wishes());
                })
                .toList();
        assertThat(plan(shuffled)).isEqualTo(plan);
    }

    @Test
    void refusesAHoleTwice() {
        List<GreenCandidates> twice = List.of(MadeGreens.green("7", FRONT), MadeGreens.green("7", BACK));
        assertThatThrownBy(() -> DayRequest.of(DAY, twice)).hasMessageContaining("hole 7 stands twice");
    }

    private static DayPlan plan(List<GreenCandidates> greens) {
        return new DayPlanner(Policy.defaults()).plan(DayRequest.of(DAY, greens));
    }

    private static List<GreenCandidates> greens(int count, Candidate... candidates) {
        List<GreenCandidates> greens = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            greens.add(MadeGreens.green(Integer.toString(i), candidates));
        }
        return greens;
    }
}
