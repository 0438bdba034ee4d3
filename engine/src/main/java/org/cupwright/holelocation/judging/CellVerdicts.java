package org.cupwright.holelocation.judging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.holelocation.Concession;
import org.cupwright.holelocation.ConcessionStep;
import org.cupwright.holelocation.HoleLocationPolicy;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.Verdict;
import org.cupwright.holelocation.rule.JudgedPosition;
import org.cupwright.holelocation.rule.RulesOfDay;
import org.cupwright.holelocation.spot.SpotGrid;
import org.cupwright.policy.Policy;

/**
 * Verdicts of all cells of a green, and what had to be conceded so that some do not fail. Judged by several threads.
 */
record CellVerdicts(List<Cell> cells, List<ConcessionStep> steps) {
    /** What is kept of a cell: its results are made again when somebody asks. */
    record Cell(
            int cell,
            Verdict verdict,
            Optional<RuleId> decides,
            double margin,
            double meanLeave,
            boolean spokenFor,
            int outcomes) {
        /** What the rules answer, two bits each in their order. */
        static int packed(List<RuleResult> results) {
            int bits = 0;
            for (int rule = 0; rule < results.size(); rule++) {
                bits |= results.get(rule).outcome().ordinal() << 2 * rule;
            }
            return bits;
        }

        Outcome outcome(int rule) {
            return OUTCOMES.get(outcomes >> 2 * rule & 3);
        }
    }

    private static final List<Outcome> OUTCOMES = List.of(Outcome.values());

    static CellVerdicts judge(SpotGrid grid, JudgedPositions positions, RulesOfDay rules, Policy policy) {
        List<Cell> strict = judge(grid, positions, rules, Concessions.of(List.of(), policy));
        if (strict.stream().anyMatch(cell -> good(cell.verdict))) {
            return new CellVerdicts(strict, List.of());
        }
        List<ConcessionStep> steps = search(grid, positions, rules, policy).find();
        List<Concession> made = steps.stream().map(ConcessionStep::concession).toList();
        return new CellVerdicts(judge(grid, positions, rules, Concessions.of(made, policy)), steps);
    }

    private static List<Cell> judge(SpotGrid grid, JudgedPositions positions, RulesOfDay rules, Concessions conceded) {
        return grid.cells()
                .parallel()
                .mapToObj(cell -> judge(cell, positions.cell(cell), rules, conceded))
                .toList();
    }

    private static Cell judge(int cell, JudgedPosition judged, RulesOfDay rules, Concessions conceded) {
        List<RuleResult> results = rules.judge(judged);
        Set<RuleId> setAside = conceded.setAside(results);
        Verdict verdict = Concessions.verdict(results, setAside, GreenJudge.inGap(judged));
        return new Cell(
                cell,
                verdict,
                Judgement.deciding(verdict, results, setAside),
                leastMargin(results, setAside),
                judged.own().leave().meanMetres(),
                spokenFor(judged, rules),
                Cell.packed(results));
    }

    /** Whether nobody measured the spot, but somebody says that it and the ground about it are good. */
    private static boolean spokenFor(JudgedPosition judged, RulesOfDay rules) {
        return !judged.own().known()
                && judged.about().stream()
                        .allMatch(spot -> rules.word(spot.at())
                                .map(PersonsOpinion::kind)
                                .filter(PersonsOpinion.Kind::speaksForAHole)
                                .isPresent());
    }

    /**
     * The least margin of the rules that count, as a share of its limit: the nearest thing to a trouble at the spot.
     */
    private static double leastMargin(List<RuleResult> results, Set<RuleId> setAside) {
        double least = 1;
        for (RuleResult result : results) {
            boolean counts = result.margin().isPresent() && result.limit().orElse(0) > 0;
            if (counts && !setAside.contains(result.rule())) {
                least = Math.min(
                        least, result.margin().getAsDouble() / result.limit().getAsDouble());
            }
        }
        return least;
    }

    private static ConcessionSearch search(SpotGrid grid, JudgedPositions positions, RulesOfDay rules, Policy policy) {
        Concessions none = Concessions.of(List.of(), policy);
        ConcessionSearch search = new ConcessionSearch(policy.get(HoleLocationPolicy.CONCESSIONS));
        grid.cells()
                .parallel()
                .mapToObj(positions::cell)
                .filter(judged -> !GreenJudge.inGap(judged))
                .map(rules::judge)
                .toList()
                .forEach(results -> search.add(results, none));
        return search;
    }

    static boolean good(Verdict verdict) {
        return verdict == Verdict.PASS || verdict == Verdict.CAUTION;
    }

    List<Concession> concessions() {
        return steps.stream().map(ConcessionStep::concession).toList();
    }

    double[] meanLeavesOfGoodGround() {
        return cells.stream()
                .filter(cell -> good(cell.verdict))
                .mapToDouble(Cell::meanLeave)
                .toArray();
    }

    int count(Verdict verdict) {
        return (int) cells.stream().filter(cell -> cell.verdict == verdict).count();
    }

    /** How many cells a rule answers so, by position in the list of rules and of outcomes. */
    int[][] countsByOutcome() {
        int[][] counts = new int[RuleId.values().length][Outcome.values().length];
        for (Cell cell : cells) {
            for (int rule = 0; rule < counts.length; rule++) {
                counts[rule][cell.outcome(rule).ordinal()]++;
            }
        }
        return counts;
    }

    /** The cells that do not fail, in the lattice's order. */
    int[] goodCells() {
        return cells.stream()
                .filter(cell -> good(cell.verdict))
                .mapToInt(Cell::cell)
                .toArray();
    }

    /**
     * The same, the best first: passing before those to take care with, where nobody measured those said to be good
     * before the others, then by the least margin.
     */
    int[] goodCellsBestFirst() {
        List<Cell> good = new ArrayList<>(
                cells.stream().filter(cell -> good(cell.verdict)).toList());
        good.sort(Comparator.comparing(Cell::verdict)
                .thenComparing(Cell::spokenFor, Comparator.reverseOrder())
                .thenComparing(Cell::margin, Comparator.reverseOrder()));
        return good.stream().mapToInt(Cell::cell).toArray();
    }

    IntStream cellNumbers() {
        return cells.stream().mapToInt(Cell::cell);
    }

    Verdict verdict(int index) {
        return cells.get(index).verdict;
    }

    Optional<RuleId> decides(int index) {
        return cells.get(index).decides;
    }

    /** By position in the list of rules. */
    Outcome outcome(int index, int rule) {
        return cells.get(index).outcome(rule);
    }
}
