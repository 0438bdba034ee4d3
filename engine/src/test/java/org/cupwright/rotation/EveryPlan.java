package org.cupwright.rotation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Lateral;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.RestsOn;
import org.cupwright.green.Third;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.Verdict;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.GreenCandidates;

/**
 * The slow reference: goes through every choice of one candidate a green and applies the definitions, with the default
 * settings written out again. Shares no arithmetic with the planner.
 */
final class EveryPlan {
    static final Map<Term, Double> WEIGHTS = new EnumMap<>(Map.ofEntries(
            Map.entry(Term.NEAR_YESTERDAY, 20.0),
            Map.entry(Term.CLOSE_TO_YESTERDAY, 1.0),
            Map.entry(Term.SAME_THIRD, 20.0),
            Map.entry(Term.CARE, 45.0),
            Map.entry(Term.DOUBTFUL, 60.0),
            Map.entry(Term.NOT_VOUCHED_FOR, 20.0),
            Map.entry(Term.NO_ROOM, 15.0),
            Map.entry(Term.LITTLE_ROOM, 5.0),
            Map.entry(Term.LEFT_RIGHT, 60.0),
            Map.entry(Term.LATERAL, 10.0),
            Map.entry(Term.DIFFICULTY, 15.0)));

    private final List<GreenCandidates> greens;
    private final boolean busy;
    private int thirdsOff = Integer.MAX_VALUE;
    private double points = Double.POSITIVE_INFINITY;
    private final Map<Term, Double> bounds = new EnumMap<>(Term.class);

    EveryPlan(DayRequest request) {
        this.busy = request.busy();
        this.greens = request.greens().stream()
                .filter(green -> !choosable(green).isEmpty())
                .toList();
        visit(0, new ArrayList<>());
    }

    int thirdsOff() {
        return thirdsOff;
    }

    double points() {
        return points;
    }

    Map<Term, Double> bounds() {
        return bounds;
    }

    static List<Candidate> choosable(GreenCandidates green) {
        if (green.wishes().closed()) {
            return List.of();
        }
        if (green.wishes().locked().isPresent()) {
            return List.of(green.wishes().locked().get());
        }
        List<Candidate> usable = green.candidates().stream()
                .filter(one -> one.verdict() != Verdict.FAIL && one.verdict() != Verdict.NOT_SURVEYED)
                .toList();
        List<Candidate> unsaved =
                usable.stream().filter(one -> !one.onSavedGround()).toList();
        return unsaved.isEmpty() ? usable : unsaved;
    }

    private void visit(int green, List<Candidate> chosen) {
        if (green == greens.size()) {
            look(chosen);
            return;
        }
        for (Candidate candidate : choosable(greens.get(green))) {
            chosen.add(candidate);
            visit(green + 1, chosen);
            chosen.remove(chosen.size() - 1);
        }
    }

    private void look(List<Candidate> chosen) {
        int off = thirdsOff(chosen);
        if (off > thirdsOff) {
            return;
        }
        if (off < thirdsOff) {
            thirdsOff = off;
            points = Double.POSITIVE_INFINITY;
            bounds.clear();
        }
        Map<Term, Double> terms = terms(greens, chosen, busy);
        double sum = 0;
        for (Term term : Term.values()) {
            sum += WEIGHTS.get(term) * terms.get(term);
            bounds.merge(term, terms.get(term), Math::min);
        }
        points = Math.min(points, sum);
    }

    static int thirdsOff(List<Candidate> chosen) {
        return moves(
                counts(chosen.stream()
                        .map(one -> one.third().map(Third::ordinal))
                        .toList()),
                2,
                2,
                2);
    }

    static Map<Term, Double> terms(List<GreenCandidates> greens, List<Candidate> chosen, boolean busy) {
        Map<Term, Double> terms = new EnumMap<>(Term.class);
        Arrays.stream(Term.values()).forEach(term -> terms.put(term, 0.0));
        for (int i = 0; i < chosen.size(); i++) {
            Candidate one = chosen.get(i);
            Optional<MapPoint> yesterday = greens.get(i).yesterday();
            if (yesterday.isPresent()) {
                double away = Math.hypot(
                        one.at().east() - yesterday.get().east(),
                        one.at().north() - yesterday.get().north());
                terms.merge(Term.NEAR_YESTERDAY, away < 5 ? 5 - away : 0, Double::sum);
                terms.merge(Term.CLOSE_TO_YESTERDAY, away < 10 ? 10 - away : 0, Double::sum);
            }
            boolean same = greens.get(i).yesterdaysThird().isPresent()
                    && one.third().isPresent()
                    && one.third().get() == greens.get(i).yesterdaysThird().get();
            terms.merge(Term.SAME_THIRD, same ? 1.0 : 0.0, Double::sum);
            terms.merge(Term.CARE, one.verdict() == Verdict.PASS ? 0.0 : 1.0, Double::sum);
            long refusing = one.judgement().rules().stream()
                    .filter(rule -> rule.leans().isPresent() && rule.leans().get() == Outcome.FAIL)
                    .filter(rule -> !one.judgement().setAside().contains(rule.rule()))
                    .count();
            terms.merge(Term.DOUBTFUL, refusing > 0 ? 1.0 : 0.0, Double::sum);
            boolean goodWord = one.judgement().word().isPresent()
                    && one.judgement().word().get().kind() != PersonsOpinion.Kind.BAD;
            boolean unknown = one.judgement().restsOn() == RestsOn.OUTLINE && !goodWord;
            terms.merge(Term.NOT_VOUCHED_FOR, unknown ? 1.0 : 0.0, Double::sum);
            terms.merge(Term.NO_ROOM, one.goodWithinMetres() < 0.457 ? 1.0 : 0.0, Double::sum);
            terms.merge(Term.LITTLE_ROOM, Math.max(0, 1.83 - one.goodWithinMetres()), Double::sum);
        }
        int[] sides = counts(
                chosen.stream().map(one -> one.lateral().map(Lateral::ordinal)).toList());
        int[] ranks = counts(chosen.stream()
                .map(one -> one.rank().map(DifficultyClass::ordinal))
                .toList());
        terms.put(Term.LEFT_RIGHT, Math.max(0.0, Math.abs(sides[0] - sides[2]) - 2));
        terms.put(Term.LATERAL, (double) moves(sides, 2, 2, 2));
        terms.put(Term.DIFFICULTY, (double) (busy ? moves(ranks, 3, 2, 1) : moves(ranks, 2, 2, 2)));
        return terms;
    }

    private static int[] counts(List<Optional<Integer>> parts) {
        int[] counts = new int[3];
        parts.forEach(part -> part.ifPresent(index -> counts[index]++));
        return counts;
    }

    /** The fewest holes to move until each part is within one of its share in sixths. */
    private static int moves(int[] counts, int... sixths) {
        int holes = counts[0] + counts[1] + counts[2];
        int fewest = Integer.MAX_VALUE;
        for (int first = 0; first <= holes; first++) {
            for (int second = 0; first + second <= holes; second++) {
                int[] even = {first, second, holes - first - second};
                int moved = 0;
                boolean isEven = true;
                for (int part = 0; part < 3; part++) {
                    isEven &= Math.abs(6 * even[part] - holes * sixths[part]) < 6;
                    moved += Math.max(0, counts[part] - even[part]);
                }
                if (isEven) {
                    fewest = Math.min(fewest, moved);
                }
            }
        }
        return fewest;
    }
}
