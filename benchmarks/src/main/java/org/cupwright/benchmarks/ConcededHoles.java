package org.cupwright.benchmarks;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.cupwright.holelocation.DistancePolicy;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.Policy;

/** Counts the holes that were cut against a rule, by what the ground was on their own morning: rule, green, month. */
final class ConcededHoles {
    private static final double CLOSER_METRES = Policy.defaults().get(DistancePolicy.OLD_HOLE_CLOSER_METRES);

    /** What a hole was cut against. */
    enum Kind {
        /** No nearer to an old hole than the first concession to that rule allows. */
        OLD_HOLE_CLOSER,
        OLD_HOLE,
        EDGE,
        HAZARD,
        OTHER
    }

    private final Map<Kind, Integer> daysByKind = new EnumMap<>(Kind.class);
    private final Map<Kind, Integer> holesByKind = new EnumMap<>(Kind.class);
    private final Map<String, Integer> holesByGreen = new TreeMap<>();
    private final Set<LocalDate> foreseen = new HashSet<>();
    private final Set<LocalDate> found = new HashSet<>();
    private final int[] daysByMonth = new int[12];
    private int days;
    private int holes;
    private int withCare;
    private int conceded;

    /**
     * @param morning by hole, what its spot is on the morning it is cut
     * @param known the holes of which the plan said beforehand that a rule is set aside for them
     */
    void count(LocalDate day, Map<String, Judgement> morning, Set<String> known) {
        days++;
        Set<Kind> today = new HashSet<>();
        morning.forEach((hole, judged) -> {
            holes++;
            withCare += judged.verdict() == Verdict.CAUTION ? 1 : 0;
            Set<Kind> kinds = kinds(judged);
            if (!kinds.isEmpty()) {
                kinds.forEach(kind -> holesByKind.merge(kind, 1, Integer::sum));
                holesByGreen.merge(hole, 1, Integer::sum);
                (known.contains(hole) ? foreseen : found).add(day);
                today.addAll(kinds);
                if (Boolean.getBoolean("cupwright.each")) {
                    System.out.println(
                            day + " hole " + hole + " " + kinds + (known.contains(hole) ? "" : ", unforeseen"));
                }
            }
        });
        today.forEach(kind -> daysByKind.merge(kind, 1, Integer::sum));
        conceded += today.isEmpty() ? 0 : 1;
        daysByMonth[day.getMonthValue() - 1] += today.isEmpty() ? 0 : 1;
    }

    private static Set<Kind> kinds(Judgement judged) {
        return judged.rules().stream()
                .filter(result -> result.outcome() == Outcome.FAIL)
                .map(ConcededHoles::kind)
                .collect(Collectors.toSet());
    }

    private static Kind kind(RuleResult broken) {
        return switch (broken.rule()) {
            case OLD_HOLE -> broken.value().orElse(0) >= CLOSER_METRES ? Kind.OLD_HOLE_CLOSER : Kind.OLD_HOLE;
            case EDGE -> Kind.EDGE;
            case HAZARD -> Kind.HAZARD;
            default -> Kind.OTHER;
        };
    }

    int days() {
        return days;
    }

    /** Days on which anything was set aside. */
    int conceded() {
        return conceded;
    }

    void print(String way) {
        System.out.printf(
                Locale.ROOT,
                "%s: anything set aside on %d of %d days (%.1f %%), foreseen %d, found on the morning %d; "
                        + "days by rule %s, holes %s of %d, by green %s, days by month %s; %.1f %% with care%n",
                way,
                conceded,
                days,
                100.0 * conceded / Math.max(1, days),
                foreseen.size(),
                found.size(),
                daysByKind,
                holesByKind,
                holes,
                holesByGreen,
                Arrays.toString(daysByMonth),
                100.0 * withCare / Math.max(1, holes));
    }
}
