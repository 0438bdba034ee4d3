package org.cupwright.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Third;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.Verdict;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Argument;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Slope;
import org.cupwright.message.Message.Translated;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.rotation.candidate.Wishes;
import org.junit.jupiter.api.Test;

/** Why the one hole of an invented green is where it is. */
class ReasonsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);
    private static final RuleId FIRST = RuleId.values()[0];
    private static final RuleId SECOND = RuleId.values()[1];
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private final Map<RuleId, RuleResult> results = new EnumMap<>(RuleId.class);

    private void found(
            RuleId rule, OptionalDouble value, OptionalDouble limit, OptionalDouble margin, Outcome outcome) {
        found(rule, value, limit, margin, outcome, Optional.empty());
    }

    private void found(
            RuleId rule,
            OptionalDouble value,
            OptionalDouble limit,
            OptionalDouble margin,
            Outcome outcome,
            Optional<Outcome> leans) {
        Message says = Message.of("made." + rule.id());
        results.put(rule, new RuleResult(rule, value, "m", limit, margin, NONE, outcome, leans, says));
    }

    private static OptionalDouble of(double value) {
        return OptionalDouble.of(value);
    }

    private Candidate spot(Verdict verdict, RuleId... setAside) {
        Judgement made = MadeGreens.judgement(15, 15, verdict, Optional.of(DifficultyClass.MEDIUM), 5);
        List<RuleResult> rules = new ArrayList<>();
        for (RuleResult rule : made.rules()) {
            RuleResult unchecked = new RuleResult(
                    rule.rule(), NONE, "m", NONE, NONE, NONE, Outcome.NOT_CHECKED, Optional.empty(), rule.says());
            rules.add(results.getOrDefault(rule.rule(), unchecked));
        }
        Judgement judgement = new Judgement(
                made.position(), verdict, made.restsOn(), rules, Set.of(setAside), made.difficulty(), Optional.empty());
        return new Candidate(judgement, Optional.of(MadeGreens.place(15, 15)), 3, false);
    }

    private static DayPlan plan(GreenCandidates green, Policy policy) {
        return new DayPlanner(policy).plan(DayRequest.of(DAY, List.of(green)));
    }

    private static List<Message> reasons(Candidate... candidates) {
        return plan(MadeGreens.green("7", candidates), Policy.defaults())
                .find("7")
                .orElseThrow()
                .reasons();
    }

    private static Message reason(String what, Argument... arguments) {
        return Message.of("rotation.reason." + what, arguments);
    }

    private static Translated name(RuleId rule) {
        return new Translated("rule." + rule.id());
    }

    /** A margin of 1 m at a limit of 4 m is a quarter, one of 0.5 m at 1 m a half. */
    @Test
    void whereNothingIsAgainstTheSpotTheRuleWithTheLeastToSpareIsNamed() {
        found(FIRST, of(1.5), of(1), of(0.5), Outcome.PASS);
        found(SECOND, of(5), of(4), of(1), Outcome.PASS);
        assertThat(reasons(spot(Verdict.PASS)))
                .contains(reason("leastToSpareMeasured", name(SECOND), new Length(5), new Length(4)))
                .contains(reason("room", new Length(3)))
                .contains(reason("difficulty", new Translated("difficulty.medium")));
    }

    @Test
    void onlyWhatPassedAndWasMeasuredAgainstALimitHasSomethingToSpare() {
        List<RuleId> rules = List.of(RuleId.values());
        found(rules.get(0), NONE, of(4), of(0.1), Outcome.PASS);
        found(rules.get(1), of(5), NONE, of(0.1), Outcome.PASS);
        found(rules.get(2), of(5), of(4), NONE, Outcome.PASS);
        found(rules.get(3), of(5), of(0), of(0.1), Outcome.PASS);
        found(rules.get(4), of(5), of(4), of(0.1), Outcome.NOT_CHECKED);
        assertThat(reasons(spot(Verdict.PASS)))
                .noneMatch(said -> said.key().startsWith("rotation.reason.leastToSpare"));
        found(rules.get(5), of(6), of(4), of(2), Outcome.PASS);
        assertThat(reasons(spot(Verdict.PASS)))
                .contains(reason("leastToSpareMeasured", name(rules.get(5)), new Length(6), new Length(4)));
    }

    @Test
    void careDoubtAndWhatWasSetAsideAreToldApart() {
        found(FIRST, of(5), of(4), of(1), Outcome.PASS);
        found(SECOND, of(3), of(4), of(-1), Outcome.CAUTION);
        assertThat(reasons(spot(Verdict.CAUTION)))
                .contains(reason("careMeasured", name(SECOND), new Length(3), new Length(4)))
                .noneMatch(said -> said.key().contains("leastToSpare"));
        found(SECOND, of(3), of(4), of(-1), Outcome.CAUTION, Optional.of(Outcome.FAIL));
        assertThat(reasons(spot(Verdict.CAUTION)))
                .contains(reason("doubtfulMeasured", name(SECOND), new Length(3), new Length(4)));
        found(SECOND, of(3), of(4), of(-1), Outcome.CAUTION, Optional.of(Outcome.PASS));
        assertThat(reasons(spot(Verdict.CAUTION)))
                .contains(reason("checkMeasured", name(SECOND), new Length(3), new Length(4)));
        found(SECOND, NONE, NONE, NONE, Outcome.FAIL);
        assertThat(reasons(spot(Verdict.CAUTION))).contains(reason("fails", name(SECOND)));
        assertThat(reasons(spot(Verdict.PASS, SECOND))).contains(reason("setAside", name(SECOND)));
    }

    @Test
    void groundThatSomebodyDrewSpeaksItsOwnSentence() {
        Message says = Message.of("made." + RuleId.DRAWN_GROUND.id());
        found(RuleId.DRAWN_GROUND, NONE, NONE, NONE, Outcome.CAUTION);
        assertThat(reasons(spot(Verdict.CAUTION))).contains(says);
        found(RuleId.DRAWN_GROUND, NONE, NONE, NONE, Outcome.FAIL);
        assertThat(reasons(spot(Verdict.CAUTION))).contains(says);
        found(RuleId.DRAWN_GROUND, NONE, NONE, NONE, Outcome.PASS);
        assertThat(reasons(spot(Verdict.PASS))).doesNotContain(says);
    }

    @Test
    void doubtAndCareAreFindingsOfTheDay() {
        found(FIRST, of(3), of(4), of(-1), Outcome.CAUTION);
        assertThat(plan(MadeGreens.green("7", spot(Verdict.CAUTION)), Policy.defaults())
                        .findings())
                .contains(Message.of("rotation.finding.care", new Name("7")));
        found(FIRST, of(3), of(4), of(-1), Outcome.CAUTION, Optional.of(Outcome.FAIL));
        assertThat(plan(MadeGreens.green("7", spot(Verdict.CAUTION)), Policy.defaults())
                        .findings())
                .contains(Message.of("rotation.finding.doubtful", new Name("7")))
                .doesNotContain(Message.of("rotation.finding.care", new Name("7")));
        assertThat(spot(Verdict.CAUTION).doubtful()).isTrue();
        assertThat(spot(Verdict.CAUTION, FIRST).doubtful()).isFalse();
    }

    @Test
    void yesterdayIsNearUntilTheLeastDistanceIsReached() {
        double least = Policy.defaults().get(RotationPolicy.YESTERDAY_LEAST_METRES);
        assertThat(sinceYesterday(least - 1))
                .contains(reason("nearYesterday", new Length(least - 1), new Length(least)));
        assertThat(sinceYesterday(least)).contains(reason("fromYesterday", new Length(least), new Length(least)));
        assertThat(reasons(spot(Verdict.PASS))).contains(reason("yesterdayUnknown"));
        GreenCandidates roughly = new GreenCandidates(
                "7", List.of(spot(Verdict.PASS)), Optional.empty(), Optional.of(Third.BACK), Wishes.none());
        assertThat(plan(roughly, Policy.defaults()).find("7").orElseThrow().reasons())
                .contains(reason("yesterdayRoughly", new Translated("third.back")));
    }

    private List<Message> sinceYesterday(double metres) {
        MapPoint yesterday = new MapPoint(15, 15 - metres);
        GreenCandidates green =
                new GreenCandidates("7", List.of(spot(Verdict.PASS)), Optional.of(yesterday), Wishes.none());
        return plan(green, Policy.defaults()).find("7").orElseThrow().reasons();
    }

    @Test
    void theOnlyThirdOfAGreenIsSaidUnlessTheSpotIsLocked() {
        Translated middle = new Translated("third.middle");
        assertThat(reasons(spot(Verdict.PASS))).contains(reason("onlyThird", middle));
        Wishes locked = new Wishes(Optional.of(spot(Verdict.PASS)), List.of(), false);
        List<Message> said = plan(new GreenCandidates("7", List.of(), Optional.empty(), locked), Policy.defaults())
                .find("7")
                .orElseThrow()
                .reasons();
        assertThat(said).contains(reason("locked")).doesNotContain(reason("onlyThird", middle));
        Policy free = Policy.defaults().with(RotationPolicy.SCHEME, Scheme.FREE);
        GreenCandidates two = MadeGreens.green("7", MadeGreens.in(Third.FRONT), MadeGreens.in(Third.BACK));
        assertThat(plan(two, free).find("7").orElseThrow().reasons())
                .extracting(Message::key)
                .contains("rotation.reason.thirdFree");
    }

    @Test
    void millimetresAreSaidInMetresAndPercentsAsSlopes() {
        assertThat(Measures.of(measuredIn("mm"), 250)).isEqualTo(new Length(0.25));
        assertThat(Measures.of(measuredIn("%"), 2.5)).isEqualTo(new Slope(2.5));
        assertThatThrownBy(() -> Measures.of(measuredIn("ft"), 1)).hasMessageContaining("ft");
    }

    private static RuleResult measuredIn(String unit) {
        return new RuleResult(FIRST, NONE, unit, NONE, NONE, NONE, Outcome.PASS, Optional.empty(), Message.of("made"));
    }

    @Test
    void thirdsComeBeforePointsAndFewerPointsAreBetter() {
        DayScore even = new DayScore(0, terms(3, 1));
        assertThat(even.points(term -> term == Term.CARE ? 10 : 2)).isEqualTo(32);
        assertThat(even.isBetter(new DayScore(1, terms(0, 0)), term -> 1)).isTrue();
        assertThat(new DayScore(1, terms(0, 0)).isBetter(even, term -> 1)).isFalse();
        assertThat(new DayScore(0, terms(2, 1)).isBetter(even, term -> 1)).isTrue();
        assertThat(even.isBetter(new DayScore(0, terms(2, 1)), term -> 1)).isFalse();
        assertThat(even.isBetter(even, term -> 1)).isFalse();
    }

    private static Map<Term, Double> terms(double care, double doubtful) {
        Map<Term, Double> terms = new EnumMap<>(Term.class);
        for (Term term : Term.values()) {
            terms.put(term, term == Term.CARE ? care : term == Term.DOUBTFUL ? doubtful : 0.0);
        }
        return terms;
    }

    @Test
    void aHoleSharesItsGreenWithAnother() {
        assertThatThrownBy(() -> new SharedGreen("7", "7")).hasMessageContaining("hole 7");
        assertThat(new SharedGreen("7", "8").second()).isEqualTo("8");
    }
}
