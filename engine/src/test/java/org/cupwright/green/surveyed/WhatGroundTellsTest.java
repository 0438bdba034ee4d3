package org.cupwright.green.surveyed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.BendFit;
import org.cupwright.green.Coverage;
import org.cupwright.green.ErrorParts;
import org.cupwright.green.Jet;
import org.cupwright.green.LevelReading;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.RestsOn;
import org.cupwright.green.Surface;
import org.cupwright.green.SurveyKind;
import org.cupwright.green.SurveyPoints;
import org.cupwright.policy.Policy;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** A small invented green that bends, seen on a grid of nodes a quarter of a metre apart, exactly. */
class WhatGroundTellsTest {
    private static final Outline GREEN = Shapes.rectangle(-2, -2, 2, 2);
    private static final MapPoint SPOT = new MapPoint(0.5, 0.25);

    /** Height 10 + 0.01 x² + 0.006 x y − 0.005 y². */
    private static final Surface BENT = (x, y, out) -> {
        out.z = 10 + 0.01 * x * x + 0.006 * x * y - 0.005 * y * y;
        out.zx = 0.02 * x + 0.006 * y;
        out.zy = 0.006 * x - 0.01 * y;
        out.zxx = 0.02;
        out.zxy = 0.006;
        out.zyy = -0.01;
    };

    private static SurveyPoints points() {
        return new MadeSurvey(BENT, -3, -3, 3, 3, 1, 0, 1).grid(0.25);
    }

    private static SurveyedGround fit(SurveyPoints points) throws SurveyTooThin {
        return SurveyedGround.fit(GREEN, points, Policy.defaults());
    }

    @Test
    void theGradientAndTheBendAreThoseOfTheGround() throws SurveyTooThin {
        SurveyedGround ground = fit(points());
        PlaneFit plane = ground.planeAt(SPOT).orElseThrow();
        assertThat(plane.gradientEast()).isCloseTo(0.0115, within(2e-4));
        assertThat(plane.gradientNorth()).isCloseTo(0.0005, within(2e-4));
        BendFit bend = ground.bendAt(SPOT, 0.91).orElseThrow();
        assertThat(bend.east2()).isCloseTo(0.02, within(1e-3));
        assertThat(bend.eastNorth()).isCloseTo(0.006, within(1e-3));
        assertThat(bend.north2()).isCloseTo(-0.01, within(1e-3));
        assertThat(ground.restsOn()).isEqualTo(RestsOn.SURVEY);
        assertThat(ground.summary().sigmaMetres()).isEqualTo(ground.surveySigmaMetres());
        assertThat(ground.heightStandardErrorMetres()).isPositive();
        assertThat(ground.spline().summary()).isEqualTo(ground.summary());
        Jet jet = new Jet();
        ground.surface().orElseThrow().at(SPOT.east(), SPOT.north(), jet);
        assertThat(jet.z).isCloseTo(10 + 0.0025 + 0.00075 - 0.0003125, within(1e-3));
    }

    @Test
    void nothingIsFittedToPointsOnALine() {
        SurveyPoints line = points().where(i -> Math.abs(points().north(i)) < 0.1);
        assertThatThrownBy(() -> fit(line))
                .isInstanceOfSatisfying(
                        SurveyTooThin.class,
                        told -> assertThat(told.reason()).isEqualTo(SurveyTooThin.Reason.ON_A_LINE));
    }

    /** A disc about a node reaches 3.64 cells: 45 nodes are no further off (29 to 3 cells, 8 each to √10 and √13). */
    @Test
    void pointsAreCountedInADisc() throws SurveyTooThin {
        SurveyedGround ground = fit(points());
        assertThat(ground.pointsInDisc(SPOT)).isEqualTo(45);
        assertThat(ground.pointsInDisc(new MapPoint(9, 9))).isZero();
        assertThat(ground.blunders()).isEmpty();
    }

    /** A disc of 2.44 m about the edge lies beyond all that was fitted; one of 0.91 m does not. */
    @Test
    void whereADiscReachesBeyondTheSurfaceNoBendIsTold() throws SurveyTooThin {
        SurveyedGround ground = fit(points());
        MapPoint edge = new MapPoint(1.9, 0);
        assertThat(ground.bendAt(edge, 0.91)).isPresent();
        assertThat(ground.bendAt(edge, 2.44)).isEmpty();
        assertThat(ground.planeAt(new MapPoint(4, 0))).isEmpty();
        assertThat(ground.coverageAt(new MapPoint(4, 0))).isEqualTo(Coverage.NOT_SURVEYED);
        assertThat(ground.slopeErrorAt(new MapPoint(4, 0))).isEmpty();
    }

    @Test
    void aPointFarOffIsToldWithItsPlaceAndHeight() throws SurveyTooThin {
        SurveyPoints sound = new MadeSurvey(BENT, -3, -3, 3, 3, 9, 0.002, 5).points();
        double[][] all = new double[3][sound.count()];
        for (int i = 0; i < sound.count(); i++) {
            all[0][i] = sound.east(i);
            all[1][i] = sound.north(i);
            all[2][i] = sound.heightMetres(i);
        }
        int wrong = 7;
        all[2][wrong] += 1.5;
        SurveyedGround ground = fit(SurveyPoints.scattered(all[0], all[1], all[2]));
        assertThat(ground.blunders()).anySatisfy(blunder -> {
            assertThat(blunder.place()).isEqualTo(new MapPoint(all[0][wrong], all[1][wrong]));
            assertThat(blunder.heightMetres()).isEqualTo(all[2][wrong]);
            assertThat(blunder.residualMetres()).isCloseTo(1.5, within(0.05));
        });
    }

    /** Read on the spot as the survey has it, and otherwise by ten points, which the survey contradicts. */
    @Test
    void readingsAreKeptAndThoseThatTheSurveyContradictsCount() throws SurveyTooThin {
        SurveyedGround ground = fit(points());
        LevelReading fitting = new LevelReading(new MapPoint(0.5, -1), 0.004, 0.013, 0.001);
        LevelReading other = new LevelReading(new MapPoint(-1, -1), -0.026 + 0.1, 0.004 - 0.1, 0.001);
        LevelReading outside = new LevelReading(new MapPoint(5, 0), 0.01, 0.02, 0.001);
        SurveyedGround after = ground.withReadings(List.of(fitting)).withReadings(List.of(other, outside));
        assertThat(after.readings()).containsExactly(fitting, other, outside);
        assertThat(after.overruling()).containsExactly(other);
        assertThat(after.planeAt(other.place())).contains(other.plane());
        assertThat(after.bendAt(other.place(), 0.91)).isEmpty();
        assertThat(after.bendAt(fitting.place(), 0.91)).isPresent();
        assertThat(after.planeAt(outside.place())).contains(outside.plane());
        assertThat(after.coverageAt(outside.place())).isEqualTo(Coverage.KNOWN);
        ErrorParts alone = after.slopeErrorAt(outside.place()).orElseThrow();
        assertThat(alone).isEqualTo(new ErrorParts(outside.plane().slopeStandardError(), 0));
        assertThat(after.spline()).isNotSameAs(ground.spline());
        assertThat(ground.withReadings(List.of(outside)).spline()).isSameAs(ground.spline());
    }

    @Test
    void theErrorHasTwoPartsWherePointsShareSomeOfTheirs() throws SurveyTooThin {
        SurveyedGround ground = fit(points().as(SurveyKind.DRONE));
        ErrorParts parts = ground.slopeErrorAt(SPOT).orElseThrow();
        assertThat(parts.shared()).isPositive();
        assertThat(parts.own()).isPositive();
        assertThat(Math.hypot(parts.own(), parts.shared()))
                .isCloseTo(ground.planeAt(SPOT).orElseThrow().slopeStandardError(), within(1e-12));
        assertThat(ground.sharing().orElseThrow().sigmaMetres()).isEqualTo(0.008);
    }

    /** What a reading tells of its own spot is the covariance there. */
    @Test
    void aReadingTellsMostOfItsOwnSpot() throws SurveyTooThin {
        SurveyedGround ground = fit(points());
        double[] own = ground.readingEffects().at(SPOT).with(SPOT);
        double[] far = ground.readingEffects().at(SPOT).with(new MapPoint(-1.5, -1.5));
        assertThat(own[0]).isPositive();
        assertThat(own[3]).isPositive();
        assertThat(Math.abs(far[0])).isLessThan(own[0]);
    }

    /** Thirty centimetres up within sixty along a line: the ground steps there, and hardly bends elsewhere. */
    @Test
    void aStepIsToldWhereItLiesAndBesideIt() throws SurveyTooThin {
        Surface stepped =
                new MadeSurface(10, 0.01, 0, List.of(), List.of()).withTier(new MadeSurface.Tier(0, 0, 1, 0, 0.3, 0.6));
        SurveyedGround ground = SurveyedGround.fit(
                Shapes.rectangle(-6, -6, 6, 6),
                new MadeSurvey(stepped, -8, -8, 8, 8, 12, 0.008, 3).points(),
                Policy.defaults());
        assertThat(ground.isAtStep(new MapPoint(0, 2))).isTrue();
        assertThat(ground.isBesideStep(new MapPoint(0, 2))).isTrue();
        assertThat(ground.isAtStep(new MapPoint(4, 2))).isFalse();
        assertThat(ground.isBesideStep(new MapPoint(4, 2))).isFalse();
    }
}
