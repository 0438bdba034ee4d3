package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundItem.Kind;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.Lateral;
import org.cupwright.green.Third;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.Verdict;
import org.cupwright.holelocation.judging.OtherGround;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.Term;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.shortage.Packing;
import org.cupwright.rotation.shortage.RestedRoom;
import org.cupwright.rotation.solver.CpSat;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/** Bounds by counting, against every plan of few spots over few days, each worked out by places and dates alone. */
class WeeksBoundsAgainstReferenceTest {
    private static final List<Term> TERMS =
            List.of(Term.LEFT_RIGHT, Term.LATERAL, Term.DIFFICULTY, Term.CARE, Term.DOUBTFUL);

    /** The least of each measure among the plans looked at. */
    private static final class Least {
        private int resting = Integer.MAX_VALUE;
        private int thirds = Integer.MAX_VALUE;
        private final Map<Term, Double> terms = new EnumMap<>(Term.class);
    }

    @Test
    void noPlanIsBetterThanTheBounds_andEachIsMet() {
        Random random = new Random(Suite.seed());
        int count = Suite.count("bounds of weeks", 200, 20);
        Map<String, Integer> met = new TreeMap<>();
        Map<String, Integer> metAboveNothing = new TreeMap<>();
        for (int i = 0; i < count; i++) {
            boolean tall = random.nextBoolean();
            int spots = 1 + random.nextInt(tall ? 2 : 4);
            WeeksRequest request = MadeWeeks.odd(random, tall ? 2 : 3, tall ? 4 : 2, spots);
            WeeksModel model = new WeeksModel(request, Policy.defaults());
            Choices choices = new Choices(model);
            Least least = new Least();
            every(request, model, choices, 0, least);
            WeeksBounds bounds = new CountedBounds(model).of(resting(model));
            below("resting", bounds.holesSetAside(), least.resting, met, metAboveNothing);
            below("thirds", bounds.thirdsOff(), least.thirds, met, metAboveNothing);
            for (Term term : TERMS) {
                below(term.name(), bounds.terms().get(term), least.terms.get(term), met, metAboveNothing);
            }
        }
        assertThat(met).hasSize(2 + TERMS.size());
        assertThat(metAboveNothing.keySet()).contains("resting", "thirds", "LATERAL", "DIFFICULTY", "CARE");
    }

    private static int resting(WeeksModel model) {
        int resting = 0;
        for (int green = 0; green < model.greenCount(); green++) {
            List<Integer> greens = model.sharing(green);
            if (greens.stream().allMatch(other -> other >= greens.get(0))) {
                Needs needs = new Needs(model, greens);
                Packing packing = new Packing(needs.spots(), model.restMetres(), Optional.of(new CpSat()), 1);
                resting += new RestedRoom(needs.need(), packing).atLeast();
            }
        }
        return resting;
    }

    private static void below(
            String measure, double bound, double least, Map<String, Integer> met, Map<String, Integer> above) {
        assertThat(bound).as(measure).isLessThanOrEqualTo(least + 1e-9);
        if (bound > least - 1e-9) {
            met.merge(measure, 1, Integer::sum);
            if (bound > 0) {
                above.merge(measure, 1, Integer::sum);
            }
        }
    }

    private static void every(WeeksRequest request, WeeksModel model, Choices choices, int from, Least least) {
        int green = from / model.dayCount();
        if (green == model.greenCount()) {
            look(request, model, choices, least);
            return;
        }
        int day = from % model.dayCount();
        int[] offered = model.table(green).offered(day);
        if (offered.length == 0) {
            every(request, model, choices, from + 1, least);
        }
        for (int spot : offered) {
            choices.put(green, day, spot);
            every(request, model, choices, from + 1, least);
        }
    }

    private static void look(WeeksRequest request, WeeksModel model, Choices choices, Least least) {
        int resting = 0;
        int thirds = 0;
        Map<Term, Double> sums = new EnumMap<>(Term.class);
        for (int day = 0; day < model.dayCount(); day++) {
            int[] byThird = new int[3];
            int[] bySide = new int[3];
            int[] byRank = new int[3];
            for (int green = 0; green < model.greenCount(); green++) {
                Optional<Candidate> at = at(model, choices, green, day);
                if (at.isEmpty()) {
                    continue;
                }
                Candidate spot = at.get();
                byThird[spot.third().map(Third::ordinal).orElseThrow()]++;
                bySide[spot.lateral().map(Lateral::ordinal).orElseThrow()]++;
                spot.rank().map(DifficultyClass::ordinal).ifPresent(rank -> byRank[rank]++);
                boolean beside = green == 1
                        && !request.sharedGreens().isEmpty()
                        && at(model, choices, 0, day)
                                .filter(other -> other.at().distanceMetres(spot.at()) < 2.74)
                                .isPresent();
                if (!model.table(green).cut(day)) {
                    continue; // what a hole costs is paid on the day it is cut
                }
                boolean eased = request.greens().get(green).eased().contains(spot);
                resting += beside || eased || rests(request, model, choices, green, day) ? 1 : 0;
                GroundOnDay ground = request.greens().get(green).days().get(day).ground();
                boolean care = new OtherGround(ground, Policy.defaults())
                                .of(spot.judgement())
                                .verdict()
                        != Verdict.PASS;
                sums.merge(Term.CARE, care ? 1.0 : 0, Double::sum);
                sums.merge(Term.DOUBTFUL, spot.doubtful() ? 1.0 : 0, Double::sum);
            }
            boolean busy = request.busy().contains(request.days().get(day));
            thirds += off(byThird, 1, 1, 1);
            sums.merge(Term.LATERAL, (double) off(bySide, 1, 1, 1), Double::sum);
            sums.merge(Term.LEFT_RIGHT, Math.max(0.0, Math.abs(bySide[0] - bySide[2]) - 2), Double::sum);
            sums.merge(Term.DIFFICULTY, (double) (busy ? off(byRank, 3, 2, 1) : off(byRank, 1, 1, 1)), Double::sum);
        }
        least.resting = Math.min(least.resting, resting);
        least.thirds = Math.min(least.thirds, thirds);
        TERMS.forEach(term -> least.terms.merge(term, sums.getOrDefault(term, 0.0), Math::min));
    }

    private static Optional<Candidate> at(WeeksModel model, Choices choices, int green, int day) {
        int spot = choices.chosen(green, day);
        return spot == GreenTable.NONE
                ? Optional.empty()
                : Optional.of(model.table(green).spot(spot));
    }

    private static boolean rests(WeeksRequest request, WeeksModel model, Choices choices, int green, int day) {
        LocalDate today = request.days().get(day);
        Candidate spot = at(model, choices, green, day).orElseThrow();
        List<GroundItem> old = new ArrayList<>();
        for (int source = 0; source < model.greenCount(); source++) {
            boolean here = source == green
                    || source < 2 && green < 2 && !request.sharedGreens().isEmpty();
            for (PastHole past : here ? model.table(source).past() : List.<PastHole>of()) {
                LocalDate left = past.leftOn().orElse(request.days().get(0));
                old.add(new GroundItem(
                        Kind.OLD_HOLE,
                        past.at().toPoint(),
                        Optional.of(past.cutOn()),
                        Optional.of(request.rests().restsUntil(left))));
            }
            for (int before = 0; before < (here ? day : 0); before++) {
                if (!model.table(source).stays().begins(before + 1)) {
                    continue; // it stays
                }
                LocalDate left = request.days().get(before + 1);
                LocalDate cut = request.days().get(before);
                at(model, choices, source, before)
                        .ifPresent(hole -> old.add(new GroundItem(
                                Kind.OLD_HOLE,
                                hole.at().toPoint(),
                                Optional.of(cut),
                                Optional.of(request.rests().restsUntil(left)))));
            }
        }
        return new GroundOnDay(today, old)
                .counting(Kind.OLD_HOLE).stream()
                        .anyMatch(item -> item.place().distance(spot.at().toPoint()) < 2.74);
    }

    /** The fewest that have to be in another part, found by trying every rounding of the shares. */
    private static int off(int[] counts, int... shares) {
        int all = Arrays.stream(counts).sum();
        double parts = Arrays.stream(shares).sum();
        int best = Integer.MAX_VALUE;
        for (int first = 0; first <= all; first++) {
            for (int second = 0; first + second <= all; second++) {
                int[] wanted = {first, second, all - first - second};
                boolean rounding = true;
                int moved = 0;
                for (int part = 0; part < 3; part++) {
                    double share = all * shares[part] / parts;
                    rounding &= wanted[part] >= Math.floor(share + 1e-9) && wanted[part] <= Math.ceil(share - 1e-9);
                    moved += Math.max(0, counts[part] - wanted[part]);
                }
                best = rounding ? Math.min(best, moved) : best;
            }
        }
        return best;
    }
}
