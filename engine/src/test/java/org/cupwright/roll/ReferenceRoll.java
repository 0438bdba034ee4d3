package org.cupwright.roll;

import org.cupwright.green.Jet;
import org.cupwright.green.Surface;
import org.cupwright.units.GreenSpeed;
import org.cupwright.units.Physics;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * The slow, independent way to roll a ball: Hipparchus' Dormand–Prince 8(5,3) with event detection, on equations set up
 * in space rather than on the map.
 *
 * <p>With r the ball's place in space, e1 and e2 the tangents of the surface towards east and north and t the unit
 * vector along the velocity, rolling of a solid sphere means {@code eᵢ·[(7/5)r̈ + g·ẑ + ρ(N/m)t] = 0} for both
 * tangents, and the surface's push N is what keeps r on it: {@code N/m = n·(r̈ + g·ẑ)}. Two linear equations give the
 * acceleration on the map.
 */
public final class ReferenceRoll {
    /**
     * A ball this slow, m/s, on ground that holds it, is at rest: it has less than a tenth of a micrometre to go on
     * the level.
     */
    private static final double REST_METRES_PER_SECOND = 2e-4;

    private final Surface surface;
    private final double rho;
    private final double tolerance;

    /** @param tolerance absolute and relative, of a step */
    public ReferenceRoll(Surface surface, GreenSpeed speed, double tolerance) {
        this.surface = surface;
        this.rho = speed.rollingResistance();
        this.tolerance = tolerance;
    }

    /** Where the ball is after so many seconds at most: {time, east, north}. */
    public double[] stop(double east, double north, double unitEast, double unitNorth, double speed, double seconds) {
        Jet jet = new Jet();
        surface.at(east, north, jet);
        double rise = jet.zx * unitEast + jet.zy * unitNorth;
        double map = speed / Math.hypot(1, rise);
        ODEIntegrator integrator = new DormandPrince853Integrator(1e-12, 0.5, tolerance, tolerance);
        integrator.addEventDetector(new AtRest());
        double[] start = {east, north, map * unitEast, map * unitNorth};
        ODEStateAndDerivative end = integrator.integrate(new InSpace(), new ODEState(0, start), seconds);
        double[] last = end.getPrimaryState();
        return new double[] {end.getTime(), last[0], last[1]};
    }

    private final class InSpace implements OrdinaryDifferentialEquation {
        private final Jet jet = new Jet();

        @Override
        public int getDimension() {
            return 4;
        }

        @Override
        public double[] computeDerivatives(double time, double[] y) {
            surface.at(y[0], y[1], jet);
            double[] e1 = {1, 0, jet.zx};
            double[] e2 = {0, 1, jet.zy};
            double[] velocity = {y[2], y[3], jet.zx * y[2] + jet.zy * y[3]};
            double lift = jet.zxx * y[2] * y[2] + 2 * jet.zxy * y[2] * y[3] + jet.zyy * y[3] * y[3];
            double[] normal = {-jet.zx, -jet.zy, 1};
            double push = (lift + Physics.GRAVITY) / Math.sqrt(dot(normal, normal));
            double speed = Math.sqrt(dot(velocity, velocity));
            double brake = rho * push / speed;
            double[] force = {
                -brake * velocity[0], -brake * velocity[1], -brake * velocity[2] - Physics.GRAVITY - 1.4 * lift
            };
            double m11 = 1.4 * dot(e1, e1);
            double m12 = 1.4 * dot(e1, e2);
            double m22 = 1.4 * dot(e2, e2);
            double f1 = dot(e1, force);
            double f2 = dot(e2, force);
            double determinant = m11 * m22 - m12 * m12;
            return new double[] {y[2], y[3], (f1 * m22 - f2 * m12) / determinant, (m11 * f2 - m12 * f1) / determinant};
        }
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    /** Stops the integration where the ball is as good as at rest and the ground holds it. */
    private final class AtRest implements ODEEventDetector {
        private final Jet jet = new Jet();

        @Override
        public AdaptableInterval getMaxCheckInterval() {
            return (state, forward) -> 0.1;
        }

        @Override
        public int getMaxIterationCount() {
            return 200;
        }

        @Override
        public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
            return new BracketingNthOrderBrentSolver(0, 1e-9, 0, 5);
        }

        @Override
        public ODEEventHandler getHandler() {
            return (state, detector, increasing) -> {
                double[] y = state.getPrimaryState();
                surface.at(y[0], y[1], jet);
                return Math.hypot(jet.zx, jet.zy) <= rho ? Action.STOP : Action.CONTINUE;
            };
        }

        @Override
        public double g(ODEStateAndDerivative state) {
            double[] y = state.getPrimaryState();
            return Math.hypot(y[2], y[3]) - REST_METRES_PER_SECOND;
        }
    }
}
