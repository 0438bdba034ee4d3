package org.cupwright.rotation.exact;

/** Answers problems of yes and no exactly, or says how far it came. */
@FunctionalInterface
public interface ZeroOneSolver {
    /**
     * The cheapest answer.
     *
     * @param mostWork how much work at most, in the solver's own unit: about a second of a usual machine each, but
     *     counted in steps, so that equal problems have equal answers on every machine
     * @throws SolverMissing where this machine has no solver
     */
    ZeroOneAnswer solve(ZeroOneProblem problem, double mostWork);

    /** Nobody who solves is there: what only a solver proves stays unproved. */
    final class SolverMissing extends RuntimeException {
        private static final long serialVersionUID = 1;

        public SolverMissing(Throwable why) {
            super(why);
        }
    }
}
