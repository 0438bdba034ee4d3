package org.cupwright.holelocation.judging;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.RandomAccess;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Green;
import org.cupwright.green.GreenLattice;
import org.cupwright.holelocation.ConcessionStep;
import org.cupwright.holelocation.HoleLocationPolicy;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;
import org.cupwright.holelocation.spot.SpotGrid;
import org.cupwright.holelocation.spot.SpotGround;
import org.cupwright.policy.Policy;

/** What was found on a whole green on a day, at every spot of its quarter-metre lattice within its outline. */
public final class GreenJudgement {
    /** How many best spots are named: our choice. */
    private static final int MOST_BEST = 5;

    private static final int OUTSIDE = -1;

    private final Green green;
    private final SpotGrid grid;
    private final GreenLattice lattice;
    private final CellVerdicts cells;
    private final int[] indexes;
    private final int[][] counts;
    private final Optional<SlopeSpread> slopes;
    private final Function<MapPoint, Judgement> judge;
    private final double bestApartMetres;

    GreenJudgement(Green green, SpotGrid grid, CellVerdicts cells, Function<MapPoint, Judgement> judge, Policy policy) {
        this.green = green;
        this.grid = grid;
        this.lattice = grid.lattice();
        this.cells = cells;
        this.judge = judge;
        this.bestApartMetres = policy.get(HoleLocationPolicy.BEST_APART_METRES);
        this.indexes = new int[lattice.size()];
        Arrays.fill(indexes, OUTSIDE);
        int[] numbers = cells.cellNumbers().toArray();
        for (int i = 0; i < numbers.length; i++) {
            indexes[numbers[i]] = i;
        }
        this.counts = cells.countsByOutcome();
        this.slopes = SlopeSpread.of(grid.spots().stream()
                .filter(SpotGround::known)
                .mapToDouble(SpotGround::slopePercent)
                .toArray());
    }

    /** How a green's spots divide, as fractions of 0–1 that sum to 1. */
    public record Shares(double pass, double caution, double fail, double notSurveyed) {}

    public Green green() {
        return green;
    }

    public GreenLattice lattice() {
        return lattice;
    }

    public double areaSquareMetres() {
        return green.hole().green().areaSquareMetres();
    }

    public Shares shares() {
        double all = Math.max(1, cells.cellNumbers().count());
        return new Shares(
                cells.count(Verdict.PASS) / all,
                cells.count(Verdict.CAUTION) / all,
                cells.count(Verdict.FAIL) / all,
                cells.count(Verdict.NOT_SURVEYED) / all);
    }

    /** How many spots a rule answers with an outcome, set aside or not. */
    public int count(RuleId rule, Outcome outcome) {
        return counts[rule.ordinal()][outcome.ordinal()];
    }

    /** How steep the green is, over all spots where that is known; empty where it is known nowhere. */
    public Optional<SlopeSpread> slopePercent() {
        return slopes;
    }

    /** The ground at the lattice's spot nearest to a point; empty off the green. */
    public Optional<SpotGround> findSpot(MapPoint point) {
        int cell = lattice.nearest(point);
        return cell >= 0 && isInside(cell) ? Optional.of(grid.get(cell)) : Optional.empty();
    }

    /** The verdict of one cell of the lattice; empty outside the outline. */
    public Optional<Verdict> findVerdict(int cell) {
        return isInside(cell) ? Optional.of(cells.verdict(indexes[cell])) : Optional.empty();
    }

    /** All that was found at a cell of the lattice, judged anew; empty outside the outline. */
    public Optional<Judgement> findJudgement(int cell) {
        return isInside(cell) ? Optional.of(judge.apply(lattice.spot(cell))) : Optional.empty();
    }

    /** Whether a cell of the lattice is worse than a verdict; what lies outside the outline is. */
    boolean isWorse(int cell, Verdict than) {
        return !isInside(cell) || cells.verdict(indexes[cell]).compareTo(than) > 0;
    }

    /** The rule by which a cell is no better, as {@link Judgement#deciding} says; empty also outside the outline. */
    public Optional<RuleId> findDeciding(int cell) {
        return isInside(cell) ? cells.decides(indexes[cell]) : Optional.empty();
    }

    /** What a rule says of a cell, set aside or not; empty outside the outline. */
    public Optional<Outcome> findOutcome(int cell, RuleId rule) {
        return isInside(cell) ? Optional.of(cells.outcome(indexes[cell], rule.ordinal())) : Optional.empty();
    }

    /** Cells that fail, by rules of a kind alone, of every so many rows and columns; in the lattice's order. */
    IntStream failing(int every, Predicate<RuleId> rules) {
        return cells.cellNumbers()
                .filter(cell -> cell % lattice.columns() % every == 0 && cell / lattice.columns() % every == 0)
                .filter(cell -> cells.verdict(indexes[cell]) == Verdict.FAIL)
                .filter(cell -> Arrays.stream(RuleId.values())
                        .allMatch(rule ->
                                rules.test(rule) || cells.outcome(indexes[cell], rule.ordinal()) != Outcome.FAIL));
    }

    private boolean isInside(int cell) {
        return indexes[cell] != OUTSIDE;
    }

    /** What was conceded because nothing passed, in the course's order; empty on most greens and days. */
    public List<ConcessionStep> concessions() {
        return cells.steps();
    }

    /** Spots that do not fail, row by row from the south-west; each is judged anew when it is asked for. */
    public List<Judgement> candidates() {
        return new Judged(cells.goodCells());
    }

    /** Up to five spots to begin with: those with most margin, a few metres apart. */
    public List<Judgement> best() {
        List<MapPoint> chosen = new ArrayList<>();
        for (int cell : cells.goodCellsBestFirst()) {
            MapPoint spot = lattice.spot(cell);
            boolean apart = chosen.stream().allMatch(other -> other.distanceMetres(spot) >= bestApartMetres);
            if (apart && chosen.size() < MOST_BEST) {
                chosen.add(spot);
            }
        }
        return chosen.stream().map(judge).toList();
    }

    /** The rules that fail anywhere, those that fail at most spots first: why a green offers little or nothing. */
    public List<RuleId> failing() {
        return Arrays.stream(RuleId.values())
                .filter(rule -> count(rule, Outcome.FAIL) > 0)
                .sorted(Comparator.comparing((RuleId rule) -> -count(rule, Outcome.FAIL)))
                .toList();
    }

    /** Judgements of some cells, made when asked for: a green has thousands. */
    private final class Judged extends AbstractList<Judgement> implements RandomAccess {
        private final int[] of;

        private Judged(int[] of) {
            this.of = of;
        }

        @Override
        public Judgement get(int index) {
            return judge.apply(lattice.spot(of[index]));
        }

        @Override
        public int size() {
            return of.length;
        }
    }
}
