package org.cupwright.green.surveyed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.ToDoubleBiFunction;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.Jet;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.Surface;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.spline.HeightErrors;
import org.cupwright.policy.Policy;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Shapes;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;
import org.tinfour.common.Vertex;
import org.tinfour.interpolation.TriangularFacetInterpolator;
import org.tinfour.standard.IncrementalTin;

/**
 * The fitted surface against a second opinion that shares nothing with it: the flat triangles between neighbouring
 * points (Delaunay, by the Tinfour library), on invented greens.
 *
 * <p>A height on a triangle is a weighted mean of three noisy heights; at an even choice of spots its variance is half
 * a point's. The fit's own error is small beside that, so the two differ by about 0.7 of the noise. Where ground bends
 * between points that stand apart a flat triangle is wrong by itself, by so much as the same points without noise show;
 * and the fit is less sure there, by as much as it says.
 */
class SurveyedGroundAgainstReferenceIT {
    private static final double RADIUS = 7;
    private static final double SIGMA = 0.01;
    private static final Outline GREEN = Shapes.circle(0, 0, RADIUS);

    @Test
    void heightsAgreeWithATriangulationWithinTheNoise() throws SurveyTooThin {
        SplittableRandom seeds = new SplittableRandom(900 + Suite.seed());
        int count = Suite.count("fitted heights against triangles", 50, 5);
        for (int i = 0; i < count; i++) {
            long seed = seeds.nextLong();
            MadeSurface tier = MadeSurface.gentle(seed, RADIUS).withTier(new MadeSurface.Tier(1, 0, 0.6, 0.8, 0.3, 2));
            compare(i % 2 == 0 ? MadeSurface.gentle(seed, RADIUS) : tier, seed);
        }
    }

    private static void compare(MadeSurface surface, long seed) throws SurveyTooThin {
        SurveyPoints points = new MadeSurvey(surface, -9, -9, 9, 9, 9, SIGMA, seed).points();
        SurveyedGround ground = SurveyedGround.fit(GREEN, points, Policy.defaults());
        Surface fitted = ground.surface().orElseThrow();
        HeightErrors errors = ground.spline().heightErrors();
        Triangles noisy = new Triangles(points, SurveyPoints::heightMetres);
        Jet jet = new Jet();
        Triangles exact = new Triangles(points, (of, point) -> {
            surface.at(of.east(point), of.north(point), jet);
            return jet.z;
        });
        int spots = 0;
        double sum = 0;
        double squares = 0;
        double greatest = 0;
        for (double east = -RADIUS; east <= RADIUS; east += 0.31) {
            for (double north = -RADIUS; north <= RADIUS; north += 0.29) {
                if (GREEN.contains(new MapPoint(east, north))) {
                    surface.at(east, north, jet);
                    double flat = exact.at(east, north) - jet.z;
                    fitted.at(east, north, jet);
                    double off = jet.z - (noisy.at(east, north) - flat);
                    spots++;
                    sum += off / SIGMA;
                    squares += off * off / SIGMA / SIGMA;
                    greatest = Math.max(greatest, Math.abs(off) / Math.hypot(SIGMA, errors.atMetres(east, north)));
                }
            }
        }
        String label = String.format(
                Locale.ROOT,
                "seed %d: mean %.3f, root mean square %.3f of the noise, greatest %.2f of noise and error",
                seed,
                sum / spots,
                Math.sqrt(squares / spots),
                greatest);
        assertThat(Math.abs(sum / spots)).as(label).isLessThan(0.1);
        assertThat(Math.sqrt(squares / spots)).as(label).isBetween(0.4, 0.8);
        assertThat(greatest).as(label).isLessThan(5);
    }

    /** Flat between neighbouring points. */
    private static final class Triangles {
        private final TriangularFacetInterpolator flat;

        Triangles(SurveyPoints points, ToDoubleBiFunction<SurveyPoints, Integer> height) {
            IncrementalTin tin = new IncrementalTin(0.3);
            for (int i = 0; i < points.count(); i++) {
                tin.add(new Vertex(points.east(i), points.north(i), height.applyAsDouble(points, i), i));
            }
            flat = new TriangularFacetInterpolator(tin);
        }

        double at(double east, double north) {
            return flat.interpolate(east, north, null);
        }
    }
}
