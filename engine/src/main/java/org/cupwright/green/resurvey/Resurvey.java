package org.cupwright.green.resurvey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.GreenLattice;
import org.cupwright.green.Jet;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.Surface;
import org.cupwright.green.spline.HeightErrors;
import org.cupwright.green.surveyed.SurveyedGround;

/**
 * What changed on a green between two surveys, within the outline and where both know the ground.
 *
 * <p>Cut and fill count only ground whose height has changed by more than two standard errors: summed over all of it,
 * noise alone would make both. The net volume is over all ground. Slope changes are of size, steeper or gentler; noise
 * raises sizes too, so each stands with the standard error of its spot.
 *
 * @param comparedSquareMetres ground that both surveys know
 * @param notComparedSquareMetres ground that one of them does not
 * @param changedSquareMetres ground whose height has changed by more than two standard errors
 * @param fill what was put on there
 * @param cut what was taken off there, a positive volume
 * @param net what was put on less what was taken off, over all compared ground
 * @param medianChange the slope change of middle size; empty when nothing could be compared
 * @param wideChange the size that 95 of 100 spots do not exceed
 * @param greatestChange the largest, with its place
 * @param steeperSquareMetres ground whose gradient has changed by more than chance explains once in twenty, and is now
 *     steeper
 * @param gentlerSquareMetres the same, and is now gentler
 * @param heights how far up or down the ground has come
 */
public record Resurvey(
        double comparedSquareMetres,
        double notComparedSquareMetres,
        double changedSquareMetres,
        Volume fill,
        Volume cut,
        Volume net,
        Optional<SlopeChange> medianChange,
        Optional<SlopeChange> wideChange,
        Optional<SlopeChange> greatestChange,
        double steeperSquareMetres,
        double gentlerSquareMetres,
        HeightChanges heights) {
    /** Every second spot of the green's lattice: half a metre, as the surfaces' knots (our choice). */
    private static final int EVERY = 2;

    private static final double CELL_SQUARE_METRES =
            EVERY * GreenLattice.CELL_METRES * EVERY * GreenLattice.CELL_METRES;

    /**
     * From a spot to the middle of the cell north-east of it: cells then fill a green whose edge runs along the
     * lattice.
     */
    private static final double MIDDLE_METRES = EVERY * GreenLattice.CELL_METRES / 2;

    /** Standard errors beyond which a height has changed (our choice: about 95 of 100). */
    private static final double ERRORS = 2;

    /**
     * Chi-square with two degrees of freedom, exceeded by chance once in twenty: −2 ln 0.05. One in twenty is our
     * choice.
     */
    private static final double GRADIENT_LIMIT = 5.9915;

    /** Compares two surveys of a green. */
    public static Resurvey between(Outline outline, SurveyedGround before, SurveyedGround after) {
        return new Comparison(outline, before, after).report();
    }

    /** The work in hand. */
    private static final class Comparison {
        private final List<MapPoint> compared = new ArrayList<>();
        private final List<SlopeChange> changes = new ArrayList<>();
        private final SurveyedGround before;
        private final SurveyedGround after;
        private final HeightErrors errorsBefore;
        private final HeightErrors errorsAfter;
        private int notCompared;
        private int steeper;
        private int gentler;

        Comparison(Outline outline, SurveyedGround before, SurveyedGround after) {
            this.before = before;
            this.after = after;
            this.errorsBefore = before.spline().heightErrors();
            this.errorsAfter = after.spline().heightErrors();
            GreenLattice lattice = GreenLattice.over(outline, 0);
            for (int row = 0; row < lattice.rows(); row += EVERY) {
                for (int column = 0; column < lattice.columns(); column += EVERY) {
                    MapPoint at =
                            new MapPoint(lattice.east(column) + MIDDLE_METRES, lattice.north(row) + MIDDLE_METRES);
                    if (outline.contains(at)) {
                        compare(at);
                    }
                }
            }
        }

        private void compare(MapPoint at) {
            Optional<PlaneFit> was = before.planeAt(at);
            Optional<PlaneFit> is = after.planeAt(at);
            if (was.isEmpty() || is.isEmpty()) {
                notCompared++;
                return;
            }
            compared.add(at);
            countSlope(was.get(), is.get());
            double error = Math.hypot(was.get().slopeStandardError(), is.get().slopeStandardError());
            changes.add(new SlopeChange(at, is.get().slopePercent() - was.get().slopePercent(), 100 * error));
        }

        /** The gradient's two components are looked at, not its size: noise alone makes sizes greater. */
        private void countSlope(PlaneFit was, PlaneFit is) {
            double east = is.gradientEast() - was.gradientEast();
            double north = is.gradientNorth() - was.gradientNorth();
            double a = was.varianceEast() + is.varianceEast();
            double b = was.covariance() + is.covariance();
            double c = was.varianceNorth() + is.varianceNorth();
            double chiSquare = (c * east * east - 2 * b * east * north + a * north * north) / (a * c - b * b);
            if (chiSquare > GRADIENT_LIMIT) {
                boolean up = is.slope() > was.slope();
                steeper += up ? 1 : 0;
                gentler += up ? 0 : 1;
            }
        }

        Resurvey report() {
            double[] rise = rises();
            List<Integer> changed = new ArrayList<>();
            for (int i = 0; i < rise.length; i++) {
                if (Math.abs(rise[i]) > ERRORS * error(compared.get(i))) {
                    changed.add(i);
                }
            }
            List<Integer> filled = changed.stream().filter(i -> rise[i] > 0).toList();
            List<Integer> taken = changed.stream().filter(i -> rise[i] < 0).toList();
            List<Integer> all = IntStream.range(0, rise.length).boxed().toList();
            changes.sort(Comparator.comparingDouble(change -> Math.abs(change.points())));
            return new Resurvey(
                    CELL_SQUARE_METRES * compared.size(),
                    CELL_SQUARE_METRES * notCompared,
                    CELL_SQUARE_METRES * changed.size(),
                    volume(filled, rise, 1),
                    volume(taken, rise, -1),
                    volume(all, rise, 1),
                    quantile(0.5),
                    quantile(0.95),
                    quantile(1),
                    CELL_SQUARE_METRES * steeper,
                    CELL_SQUARE_METRES * gentler,
                    heights(rise));
        }

        private double[] rises() {
            Surface was = before.surface().orElseThrow();
            Surface is = after.surface().orElseThrow();
            Jet jet = new Jet();
            double[] rises = new double[compared.size()];
            for (int i = 0; i < rises.length; i++) {
                MapPoint at = compared.get(i);
                is.at(at.east(), at.north(), jet);
                double height = jet.z;
                was.at(at.east(), at.north(), jet);
                rises[i] = height - jet.z;
            }
            return rises;
        }

        private HeightChanges heights(double[] rise) {
            List<HeightChange> sorted = IntStream.range(0, rise.length)
                    .mapToObj(i -> new HeightChange(compared.get(i), rise[i], error(compared.get(i))))
                    .sorted(Comparator.comparingDouble(HeightChange::metres))
                    .toList();
            return HeightChanges.of(sorted);
        }

        private double error(MapPoint at) {
            return Math.hypot(
                    errorsBefore.atMetres(at.east(), at.north()), errorsAfter.atMetres(at.east(), at.north()));
        }

        private Volume volume(List<Integer> spots, double[] rise, int sign) {
            double[] east =
                    spots.stream().mapToDouble(i -> compared.get(i).east()).toArray();
            double[] north =
                    spots.stream().mapToDouble(i -> compared.get(i).north()).toArray();
            double[] weights =
                    spots.stream().mapToDouble(i -> CELL_SQUARE_METRES).toArray();
            double sum = spots.stream()
                    .mapToDouble(i -> CELL_SQUARE_METRES * rise[i])
                    .sum();
            double error =
                    Math.hypot(errorsBefore.ofSum(east, north, weights), errorsAfter.ofSum(east, north, weights));
            return new Volume(sign * sum + 0.0, error);
        }

        private Optional<SlopeChange> quantile(double share) {
            return changes.isEmpty()
                    ? Optional.empty()
                    : Optional.of(changes.get((int) Math.ceil(share * changes.size()) - 1));
        }
    }
}
