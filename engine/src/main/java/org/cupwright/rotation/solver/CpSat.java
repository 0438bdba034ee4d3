package org.cupwright.rotation.solver;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.cupwright.rotation.exact.ZeroOneAnswer;
import org.cupwright.rotation.exact.ZeroOneAnswer.Outcome;
import org.cupwright.rotation.exact.ZeroOneProblem;
import org.cupwright.rotation.exact.ZeroOneSolver;

/**
 * Answers by OR-Tools' CP-SAT: one worker, a fixed seed, and a limit of work that is counted, not of time, so that
 * equal problems have equal answers. The library is loaded at the first problem; ordinary commands never load it.
 */
public final class CpSat implements ZeroOneSolver {
    /** The library is one for all of a process, loaded once; what came of it holds for all who ask. */
    private static final class Library {
        private static final Throwable MISSING = load();

        // What goes wrong with a native library comes as an error, a missing file of it or a wrong machine included.
        private static Throwable load() {
            try {
                Loader.loadNativeLibraries();
                return null;
            } catch (RuntimeException | LinkageError missing) {
                return missing;
            }
        }
    }

    @Override
    public ZeroOneAnswer solve(ZeroOneProblem problem, double mostWork) {
        if (Library.MISSING != null) {
            throw new SolverMissing(Library.MISSING);
        }
        CpModel model = new CpModel();
        BoolVar[] decisions = IntStream.range(0, problem.size())
                .mapToObj(number -> model.newBoolVar(""))
                .toArray(BoolVar[]::new);
        problem.counts().forEach(count -> add(model, decisions, count));
        if (problem.hasCosts()) {
            long[] costs =
                    IntStream.range(0, problem.size()).mapToLong(problem::cost).toArray();
            model.minimize(LinearExpr.weightedSum(decisions, costs));
        }
        if (!problem.hinted().isEmpty()) {
            BitSet hinted = new BitSet();
            problem.hinted().forEach(hinted::set);
            for (int number = 0; number < decisions.length; number++) {
                model.addHint(decisions[number], hinted.get(number) ? 1 : 0);
            }
        }
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1).setMaxDeterministicTime(mostWork);
        return answer(solver, solver.solve(model), decisions);
    }

    private static void add(CpModel model, BoolVar[] decisions, ZeroOneProblem.Count count) {
        List<Literal> counted = Arrays.stream(count.decisions())
                .mapToObj(number -> (Literal) decisions[number])
                .toList();
        if (count.most() == 1 && count.least() == 1) {
            model.addExactlyOne(counted);
        } else if (count.most() == 1 && count.least() == 0) {
            model.addAtMostOne(counted);
        } else {
            LinearExpr sum = LinearExpr.sum(counted.toArray(Literal[]::new));
            model.addLinearConstraint(sum, count.least(), count.most());
        }
    }

    private static ZeroOneAnswer answer(CpSolver solver, CpSolverStatus status, BoolVar[] decisions) {
        BitSet yes = new BitSet();
        Outcome outcome = switch (status) {
            case OPTIMAL -> Outcome.BEST;
            case FEASIBLE -> Outcome.FOUND;
            case INFEASIBLE -> Outcome.IMPOSSIBLE;
            case UNKNOWN -> Outcome.OPEN;
            case MODEL_INVALID, UNRECOGNIZED ->
                throw new IllegalArgumentException("not a problem the solver takes: " + status);
        };
        boolean found = outcome == Outcome.BEST || outcome == Outcome.FOUND;
        if (found) {
            for (int number = 0; number < decisions.length; number++) {
                yes.set(number, solver.booleanValue(decisions[number]));
            }
        }
        // Costs are whole numbers: no answer is cheaper than the bound rounded up.
        long bound = outcome == Outcome.IMPOSSIBLE ? 0 : (long) Math.ceil(solver.bestObjectiveBound() - 1e-6);
        return new ZeroOneAnswer(outcome, yes, found ? Math.round(solver.objectiveValue()) : 0, bound);
    }
}
