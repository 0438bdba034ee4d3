package org.cupwright.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.cupwright.course.MapPoint;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.GreenCandidates;

/**
 * Recounts a plan from its positions alone and holds it against what was asked; knows nothing of how plans are made.
 */
final class DayPlanChecker {
    private final DayRequest request;
    private final DayPlan plan;
    private final String as;

    private DayPlanChecker(DayRequest request, DayPlan plan, String as) {
        this.request = request;
        this.plan = plan;
        this.as = as;
    }

    static void check(DayRequest request, DayPlan plan, String as) {
        DayPlanChecker checker = new DayPlanChecker(request, plan, as);
        checker.everyGreenIsPlannedOrNamed();
        checker.positionsMayBeChosen();
        checker.countsAreRight();
        checker.boundsAreNotBeaten();
        checker.deviationsAreNamed();
        checker.everyHoleSaysWhy();
    }

    private void everyGreenIsPlannedOrNamed() {
        List<String> planned = new ArrayList<>();
        for (GreenCandidates green : request.greens()) {
            if (EveryPlan.choosable(green).isEmpty()) {
                assertThat(named(green.hole())).as(as).containsAnyOf("closed", "nothingUsable");
            } else {
                planned.add(green.hole());
            }
        }
        assertThat(plan.holes()).as(as).extracting(PlannedHole::hole).isEqualTo(planned);
    }

    private void positionsMayBeChosen() {
        for (PlannedHole hole : plan.holes()) {
            GreenCandidates green = green(hole.hole());
            assertThat(EveryPlan.choosable(green)).as(as).contains(hole.candidate());
            assertThat(hole.locked()).as(as).isEqualTo(green.wishes().locked().isPresent());
            if (!hole.candidate().usable()) {
                assertThat(hole.locked()).as(as).isTrue();
                assertThat(named(hole.hole())).as(as).contains("lockedNotUsable");
            }
            if (hole.candidate().onSavedGround()) {
                assertThat(named(hole.hole())).as(as).contains(hole.locked() ? "lockedOnSaved" : "savedGroundUsed");
            }
            assertThat(named(hole.hole()).contains("noLineOfPlay"))
                    .as(as)
                    .isEqualTo(hole.candidate().place().isEmpty());
            assertThat(named(hole.hole()).contains("difficultyUnknown"))
                    .as(as)
                    .isEqualTo(hole.candidate().rank().isEmpty());
        }
    }

    private void countsAreRight() {
        List<Candidate> chosen =
                plan.holes().stream().map(PlannedHole::candidate).toList();
        List<GreenCandidates> greens =
                plan.holes().stream().map(hole -> green(hole.hole())).toList();
        Map<Term, Double> terms = EveryPlan.terms(greens, chosen, request.busy());
        for (Term term : Term.values()) {
            assertThat(plan.terms().get(term)).as("%s %s", as, term).isCloseTo(terms.get(term), within(1e-9));
        }
        assertThat(plan.thirdsOff()).as(as).isEqualTo(EveryPlan.thirdsOff(chosen));
        int[] counts = new int[9];
        for (Candidate one : chosen) {
            one.third().ifPresent(third -> counts[third.ordinal()]++);
            one.lateral().ifPresent(lateral -> counts[3 + lateral.ordinal()]++);
            one.rank().ifPresent(rank -> counts[6 + rank.ordinal()]++);
        }
        for (int part = 0; part < 3; part++) {
            assertThat(plan.totals().thirds().count(part)).as(as).isEqualTo(counts[part]);
            assertThat(plan.totals().laterals().count(part)).as(as).isEqualTo(counts[3 + part]);
            assertThat(plan.totals().difficulties().count(part)).as(as).isEqualTo(counts[6 + part]);
        }
        assertThat(plan.totals().holes()).as(as).isEqualTo(chosen.size());
    }

    private void boundsAreNotBeaten() {
        for (Term term : Term.values()) {
            assertThat(plan.bounds().get(term))
                    .as("%s %s", as, term)
                    .isBetween(0.0, plan.terms().get(term) + 1e-4);
        }
    }

    private void deviationsAreNamed() {
        List<String> keys = plan.findings().stream().map(DayPlanChecker::key).toList();
        assertThat(keys.contains("thirds")).as(as).isEqualTo(plan.thirdsOff() > 0);
        if (plan.thirdsOff() > 0) {
            assertThat(keys).as(as).containsAnyOf("tooFewGreensOffer", "tooManyGreensOfferOnly");
        }
        assertThat(keys.contains("leftRight")).as(as).isEqualTo(plan.terms().get(Term.LEFT_RIGHT) > 0);
        assertThat(keys.contains("lateral")).as(as).isEqualTo(plan.terms().get(Term.LATERAL) > 0);
        assertThat(keys.contains("difficulty")).as(as).isEqualTo(plan.terms().get(Term.DIFFICULTY) > 0);
        for (PlannedHole hole : plan.holes()) {
            boolean near = green(hole.hole())
                    .yesterday()
                    .map(yesterday -> metres(yesterday, hole.candidate().at()) < 5)
                    .orElse(false);
            assertThat(named(hole.hole()).contains("nearYesterday")).as(as).isEqualTo(near);
        }
    }

    private void everyHoleSaysWhy() {
        for (PlannedHole hole : plan.holes()) {
            assertThat(hole.reasons()).as(as).hasSizeGreaterThanOrEqualTo(4);
            assertThat(hole.reasons())
                    .as(as)
                    .allMatch(reason -> reason.key().startsWith("rotation.reason.")
                            || reason.key().startsWith("rule.drawnGround."));
            hole.alternative().ifPresent(other -> {
                assertThat(hole.locked()).as(as).isFalse();
                assertThat(EveryPlan.choosable(green(hole.hole()))).as(as).contains(other.candidate());
                assertThat(other.candidate()).as(as).isNotEqualTo(hole.candidate());
                assertThat(other.whyNot()).as(as).isNotEmpty();
            });
        }
    }

    private static double metres(MapPoint a, MapPoint b) {
        return Math.hypot(a.east() - b.east(), a.north() - b.north());
    }

    private GreenCandidates green(String hole) {
        return request.greens().stream()
                .filter(green -> green.hole().equals(hole))
                .findFirst()
                .orElseThrow();
    }

    private List<String> named(String hole) {
        return plan.findings().stream()
                .filter(finding -> finding.arguments().contains(new Name(hole)))
                .map(DayPlanChecker::key)
                .toList();
    }

    static String key(Message finding) {
        return finding.key().substring("rotation.finding.".length());
    }
}
