package org.cupwright.green.agreement;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.green.LevelReading;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.spline.SharedError;
import org.cupwright.green.spline.Trends;
import org.cupwright.green.surveyed.ReadingEffects;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Direction;
import org.cupwright.message.Message.SlopePoints;
import org.cupwright.message.Message.Translated;
import org.cupwright.units.Heading;

/**
 * Whether level readings disagree with a survey in one direction: all by the same slope (the survey is tilted), or all
 * away from, or towards, the middle of the readings (it is domed).
 *
 * <p>The disagreements (reading less surveyed gradient) have a known covariance: the survey's own between the spots,
 * and the readings'. Their common part is found by generalised least squares; its chi-square tells whether chance
 * explains it.
 *
 * @param count readings at surveyed spots
 * @param middle of those spots
 * @param tiltEastPoints how much more the ground rises towards east than the survey says, percentage points
 * @param tiltNorthPoints the same towards north
 * @param tiltChiSquare of both, two degrees of freedom
 * @param domePointsPerMetre how much more the ground rises away from the middle, points for each metre from it
 * @param domeChiSquare one degree of freedom
 */
public record SurveyAgainstReadings(
        int count,
        MapPoint middle,
        double tiltEastPoints,
        double tiltNorthPoints,
        double tiltChiSquare,
        double domePointsPerMetre,
        double domeChiSquare) {
    /** Fewer readings show no common direction (our choice). */
    public static final int LEAST_READINGS = 3;

    /**
     * Compares.
     *
     * @param survey the ground before any reading was taken in
     * @throws IllegalArgumentException when it holds readings already: they would be compared with themselves
     */
    public static SurveyAgainstReadings of(SurveyedGround survey, List<LevelReading> readings) {
        if (!survey.readings().isEmpty()) {
            throw new IllegalArgumentException(
                    "the survey holds " + survey.readings().size()
                            + " readings already. Maybe compare with the ground before they were taken in.");
        }
        List<LevelReading> known = readings.stream()
                .filter(reading -> survey.planeAt(reading.place()).isPresent())
                .toList();
        MapPoint middle = middle(known);
        if (known.size() < LEAST_READINGS) {
            return new SurveyAgainstReadings(known.size(), middle, 0, 0, 0, 0, 0);
        }
        double[] disagreements = disagreements(survey, known);
        double[][] covariance = covariance(survey, known);
        double[][] columns = columns(known, middle);
        SharedError tilt = SharedError.of(disagreements, covariance, columns[0], columns[1]);
        SharedError dome = SharedError.of(disagreements, covariance, columns[2]);
        return new SurveyAgainstReadings(
                known.size(),
                middle,
                100 * tilt.estimate()[0],
                100 * tilt.estimate()[1],
                tilt.chiSquare(),
                100 * dome.estimate()[0],
                dome.chiSquare());
    }

    private static MapPoint middle(List<LevelReading> readings) {
        double east = readings.stream()
                .mapToDouble(reading -> reading.place().east())
                .average()
                .orElse(0);
        double north = readings.stream()
                .mapToDouble(reading -> reading.place().north())
                .average()
                .orElse(0);
        return new MapPoint(east, north);
    }

    private static double[] disagreements(SurveyedGround survey, List<LevelReading> readings) {
        double[] disagreements = new double[2 * readings.size()];
        for (int i = 0; i < readings.size(); i++) {
            PlaneFit plane = survey.planeAt(readings.get(i).place()).orElseThrow();
            disagreements[2 * i] = readings.get(i).gradientEast() - plane.gradientEast();
            disagreements[2 * i + 1] = readings.get(i).gradientNorth() - plane.gradientNorth();
        }
        return disagreements;
    }

    private static double[][] covariance(SurveyedGround survey, List<LevelReading> readings) {
        ReadingEffects effects = survey.readingEffects();
        int count = readings.size();
        double[][] covariance = new double[2 * count][2 * count];
        for (int i = 0; i < count; i++) {
            ReadingEffects.At at = effects.at(readings.get(i).place());
            for (int j = 0; j < count; j++) {
                double[] with = at.with(readings.get(j).place());
                covariance[2 * j][2 * i] = with[0];
                covariance[2 * j][2 * i + 1] = with[1];
                covariance[2 * j + 1][2 * i] = with[2];
                covariance[2 * j + 1][2 * i + 1] = with[3];
            }
            double own = readings.get(i).standardError();
            covariance[2 * i][2 * i] += own * own;
            covariance[2 * i + 1][2 * i + 1] += own * own;
        }
        return covariance;
    }

    /** A tilt towards east, one towards north, and a dome about the middle, as gradients at the readings. */
    private static double[][] columns(List<LevelReading> readings, MapPoint middle) {
        double[][] columns = new double[3][2 * readings.size()];
        for (int i = 0; i < readings.size(); i++) {
            columns[0][2 * i] = 1;
            columns[1][2 * i + 1] = 1;
            columns[2][2 * i] = readings.get(i).place().east() - middle.east();
            columns[2][2 * i + 1] = readings.get(i).place().north() - middle.north();
        }
        return columns;
    }

    public double tiltPoints() {
        return Math.hypot(tiltEastPoints, tiltNorthPoints);
    }

    public boolean isTilted() {
        return tiltChiSquare > Trends.TILT_LIMIT && tiltPoints() >= 100 * Trends.LEAST_SLOPE;
    }

    /** Worth a word when it comes to something five metres from the middle, as far as most of a green lies. */
    public boolean isDomed() {
        return domeChiSquare > Trends.DOME_LIMIT && atReach() >= 100 * Trends.LEAST_SLOPE;
    }

    private double atReach() {
        return Trends.DOME_REACH_METRES * Math.abs(domePointsPerMetre);
    }

    /** What to tell the person: nothing when chance explains the disagreements. */
    public List<Finding> findings(Hole hole) {
        List<Finding> findings = new ArrayList<>();
        Message where = Where.hole(hole.id());
        if (isTilted()) {
            Heading falls = Heading.ofStep(-tiltEastPoints, -tiltNorthPoints);
            findings.add(Finding.of(FindingKind.SURVEY_TILTED, where, new SlopePoints(tiltPoints()))
                    .saying(new Direction(falls, hole.lineOfPlay().map(LineOfPlay::atGreen)), new Count(count))
                    .at(middle));
        }
        if (isDomed()) {
            Translated shape = new Translated(domePointsPerMetre > 0 ? "survey.shape.bowl" : "survey.shape.crown");
            findings.add(Finding.of(FindingKind.SURVEY_DOMED, where, new SlopePoints(atReach()))
                    .saying(shape, new Count(count))
                    .at(middle));
        }
        return findings;
    }
}
