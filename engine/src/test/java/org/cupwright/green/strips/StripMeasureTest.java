package org.cupwright.green.strips;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.SharedAmplitude;
import org.cupwright.green.Sharing;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.strips.StripDiscs.Disc;
import org.cupwright.green.strips.StripTold.Why;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** What strips tell, on an invented green of 16 by 16 m, 12 points/m² a strip, 4 mm of noise unless said. */
class StripMeasureTest {
    private static final Outline GREEN = Shapes.rectangle(-8, -8, 8, 8);
    private static final Sharing SET = new Sharing(0.008, 3, false);

    /** Height of the ground as a strip has it. */
    private interface Heights {
        double at(int strip, double east, double north);
    }

    private static SurveyPoints points(int strips, double noise, Heights heights) {
        Random random = new Random(5);
        int each = 12 * 18 * 18;
        double[][] xyz = new double[3][strips * each];
        for (int i = 0; i < strips * each; i++) {
            xyz[0][i] = 18 * random.nextDouble() - 9;
            xyz[1][i] = 18 * random.nextDouble() - 9;
            xyz[2][i] = heights.at(i / each, xyz[0][i], xyz[1][i]) + noise * random.nextGaussian();
        }
        return SurveyPoints.scattered(xyz[0], xyz[1], xyz[2])
                .inStrips(IntStream.range(0, strips * each).map(i -> i / each).toArray());
    }

    private static double bowl(double east, double north) {
        return 90 + 0.02 * east + 0.003 * (east * east + north * north);
    }

    private static double wave(int strip, double east, double north) {
        return 0.008 * Math.sin(east / 3 + 2 * strip) * Math.cos(north / 3 - strip);
    }

    private static SharedAmplitude measured(SurveyPoints points, Sharing set) {
        return StripMeasure.of(GREEN, points, set).measured().orElseThrow();
    }

    @Test
    void stripsThatAgreeShowThatLittleIsShared() {
        SharedAmplitude measured = measured(points(2, 0.004, (strip, x, y) -> bowl(x, y)), SET);
        assertThat(measured.sigmaMetres()).isLessThan(0.002);
        assertThat(measured.errorMetres()).isBetween(1e-4, 0.001);
        assertThat(measured.lengthMetres()).isEqualTo(3);
    }

    @Test
    void stripsThatWaveShowHowMuch() {
        SharedAmplitude two = measured(points(2, 0.004, (strip, x, y) -> bowl(x, y) + wave(strip, x, y)), SET);
        SharedAmplitude three = measured(points(3, 0.004, (strip, x, y) -> bowl(x, y) + wave(strip, x, y)), SET);
        assertThat(two.sigmaMetres()).isBetween(0.002, 0.008); // a product of waves has half its size
        assertThat(three.errorMetres()).isLessThan(two.errorMetres());
    }

    @Test
    void whatIsSetHardlyMattersOnceStripsTell() {
        SurveyPoints points = points(2, 0.002, (strip, x, y) -> bowl(x, y) + wave(strip, x, y));
        double half = measured(points, new Sharing(0.004, 3, false)).sigmaMetres();
        double twice = measured(points, new Sharing(0.016, 3, false)).sigmaMetres();
        assertThat(half).isCloseTo(twice, within(0.15 * twice));
    }

    @Test
    void whatTheWholeOfAStripIsOffByIsNoSlope() {
        SurveyPoints level = points(2, 0.004, (strip, x, y) -> bowl(x, y));
        SurveyPoints higher = points(2, 0.004, (strip, x, y) -> bowl(x, y) + 0.5 * strip);
        assertThat(measured(higher, SET).sigmaMetres())
                .isCloseTo(measured(level, SET).sigmaMetres(), within(1e-9));
    }

    @Test
    void flagsAndFeetAreLeftOut() {
        SurveyPoints clean = points(2, 0.004, (strip, x, y) -> bowl(x, y));
        SurveyPoints flags =
                points(2, 0.004, (strip, x, y) -> bowl(x, y) + (strip == 0 && Math.hypot(x % 3, y % 3) < 0.1 ? 1 : 0));
        assertThat(measured(flags, SET).sigmaMetres())
                .isCloseTo(measured(clean, SET).sigmaMetres(), within(5e-4));
    }

    @Test
    void aDriftAlongTheWalkIsMeasuredAlongIt() {
        Sharing drift = new Sharing(0.008, 60, true);
        SharedAmplitude none = measured(walked(0), drift);
        SharedAmplitude some = measured(walked(0.008), drift);
        assertThat(none.sigmaMetres()).isLessThan(0.006);
        assertThat(some.sigmaMetres()).isGreaterThan(1.3 * none.sigmaMetres());
        assertThat(some.lengthMetres()).isEqualTo(60);
    }

    /** Two walks to and fro, lines 0.4 m apart, the second across the first. */
    private static SurveyPoints walked(double drift) {
        Random random = new Random(3);
        int side = 45;
        double[][] xyz = new double[3][2 * side * side];
        int[] strips = new int[2 * side * side];
        for (int walk = 0; walk < 2; walk++) {
            double off = drift * random.nextGaussian();
            for (int k = 0; k < side * side; k++) {
                double line = 0.4 * (k / side) - 9;
                double along = (k / side % 2 == 0 ? 1 : -1) * (0.4 * (k % side) - 9);
                int i = walk * side * side + k;
                double fade = Math.exp(-0.4 / 60);
                off = fade * off + drift * Math.sqrt(1 - fade * fade) * random.nextGaussian();
                xyz[0][i] = walk == 0 ? line : along;
                xyz[1][i] = walk == 0 ? along : line;
                xyz[2][i] = bowl(xyz[0][i], xyz[1][i]) + off + 0.004 * random.nextGaussian();
                strips[i] = walk;
            }
        }
        return SurveyPoints.scattered(xyz[0], xyz[1], xyz[2]).inStrips(strips);
    }

    @Test
    void whyNothingIsToldIsSaid() {
        SurveyPoints two = points(2, 0.004, (strip, x, y) -> bowl(x, y));
        assertThat(StripMeasure.of(GREEN, two, Sharing.NONE).why()).isEqualTo(Why.NOTHING_SET);
        assertThat(StripMeasure.of(GREEN, two.where(i -> two.strip(i) == 1), SET)
                        .why())
                .isEqualTo(Why.ONE_STRIP);
        SurveyPoints apart = two.where(i -> two.strip(i) == 0 ? two.east(i) < 0.3 : two.east(i) > -0.3);
        assertThat(StripMeasure.of(GREEN, apart, SET).why()).isEqualTo(Why.LITTLE_OVERLAP);
        SurveyPoints thin = two.where(i -> two.strip(i) == 0 || i % 20 == 0);
        assertThat(StripMeasure.of(GREEN, thin, SET)).isEqualTo(StripTold.nothing(Why.LITTLE_OVERLAP));
        SurveyPoints unsaid = two.inStrips(
                IntStream.range(0, two.count()).map(i -> SurveyPoints.NO_STRIP).toArray());
        assertThat(StripMeasure.of(GREEN, unsaid, SET).why()).isEqualTo(Why.ONE_STRIP);
    }

    /** Ground that bends, and a tilt of the second strip: the difference is the tilt alone. */
    @Test
    void differencesAreThoseOfThePlanesWhateverTheGroundIs() {
        SurveyPoints points =
                points(3, 0, (strip, x, y) -> bowl(x, y) - 0.002 * x * y + strip * (0.01 * x - 0.004 * y));
        Disc disc = new StripDiscs(points, 1.5).on(GREEN).get(0);
        StripFit fit = StripFit.of(points, disc, 1.5);
        assertThat(fit.rows()).isEqualTo(4);
        for (int of = 1; of < 3; of++) {
            int apart = fit.strip(of) - fit.strip(0);
            assertThat(fit.difference(2 * of - 2)).isCloseTo(0.01 * apart, within(1e-9));
            assertThat(fit.difference(2 * of - 1)).isCloseTo(-0.004 * apart, within(1e-9));
        }
    }

    @Test
    void discsHaveNoPointInCommonAndAreSpreadOverTheGreen() {
        SurveyPoints points = points(2, 0, (strip, x, y) -> 0);
        for (double radius : new double[] {1, 1.5, 3}) {
            List<Disc> discs = new StripDiscs(points, radius).on(GREEN);
            assertThat(discs.size()).as("radius " + radius).isBetween(9, 40);
            for (Disc one : discs) {
                assertThat(GREEN.contains(new MapPoint(one.east(), one.north())))
                        .isTrue();
                assertThat(discs.stream()
                                .filter(other -> Math.hypot(one.east() - other.east(), one.north() - other.north())
                                        < 2 * radius - 1e-5)
                                .count())
                        .isEqualTo(1);
            }
            assertThat(discs.stream().mapToDouble(Disc::east).max().orElseThrow())
                    .isGreaterThan(3);
        }
    }
}
