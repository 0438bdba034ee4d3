package org.cupwright.green.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.Hole;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.green.Coverage;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.field.GreenField;
import org.cupwright.green.field.GroundArea;
import org.cupwright.green.surveyed.Blunder;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Area;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Slope;
import org.cupwright.message.Message.SlopePoints;
import org.cupwright.message.Message.Translated;

/**
 * What the fitted survey of a green itself shows: gaps, slopes known badly, points that lie unevenly, steps, points
 * left out.
 */
public final class SurveyFindings {
    /** Above it a green is steep enough to ask whether its heights are in feet: 2 % then reads 6.6 %. Our choice. */
    public static final double STEEP_SLOPE = 0.06;

    /** Slopes known worse than this, two standard errors, do not judge a spot, points: our choice. */
    private static final double GOOD_FOR_JUDGING_POINTS = 0.6;

    /** A part smaller than this is told together with others like it, m²: our choice. */
    private static final double SMALL_SQUARE_METRES = 1;

    /** Points lie unevenly where they are this many times fewer than on most of the green: our choice. */
    private static final int TIMES_FEWER = 3;

    /** ... and on this share of the green: our choice. */
    private static final double UNEVEN_SHARE = 0.1;

    /** Less steep than this nobody who stands there sees a step, per cent: our choice. */
    private static final double STEP_PERCENT = 10;

    private final Hole hole;
    private final SurveyedGround ground;
    private final Message where;

    private SurveyFindings(Hole hole, SurveyedGround ground) {
        this.hole = hole;
        this.ground = ground;
        this.where = Where.hole(hole.id());
    }

    /**
     * What the survey shows.
     *
     * @param ground with the level readings taken in, if there are any: a gap that was read is none
     */
    public static List<GroundFinding> of(Hole hole, SurveyedGround ground) {
        SurveyFindings findings = new SurveyFindings(hole, ground);
        List<GroundFinding> all = new ArrayList<>(findings.gaps());
        all.addAll(findings.badlyKnown());
        findings.uneven().ifPresent(all::add);
        findings.steep().ifPresent(all::add);
        all.addAll(findings.steps());
        all.addAll(findings.leftOut());
        return all;
    }

    private List<GroundFinding> gaps() {
        GreenField gaps =
                new GreenField(hole.green(), spot -> ground.coverageAt(spot) == Coverage.KNOWN ? Double.NaN : 1);
        List<GroundArea> areas = gaps.areasAbove(0);
        List<GroundArea> small = areas.stream()
                .filter(area -> area.squareMetres() < SMALL_SQUARE_METRES)
                .toList();
        List<GroundFinding> findings = new ArrayList<>();
        areas.stream()
                .filter(area -> area.squareMetres() >= SMALL_SQUARE_METRES)
                .map(area -> GroundFinding.over(area, gap(FindingKind.PART_NOT_SURVEYED, area.squareMetres())))
                .forEach(findings::add);
        if (!small.isEmpty()) {
            double squareMetres =
                    small.stream().mapToDouble(GroundArea::squareMetres).sum();
            findings.add(GroundFinding.over(
                    GroundArea.together(small),
                    gap(FindingKind.SMALL_PARTS_NOT_SURVEYED, squareMetres).saying(new Count(small.size()))));
        }
        return findings;
    }

    private Finding gap(FindingKind kind, double squareMetres) {
        return Finding.of(kind, where, new Area(squareMetres));
    }

    /** Either the whole green, or the parts of it whose slopes are known too badly; steps are told as such. */
    private List<GroundFinding> badlyKnown() {
        GreenField errors = new GreenField(
                hole.green(),
                spot -> ground.planeAt(spot)
                        .filter(plane -> !ground.isBesideStep(spot))
                        .map(plane -> 2 * 100 * plane.slopeStandardError())
                        .orElse(Double.NaN));
        double middle = errors.quantile(0.5);
        if (middle > GOOD_FOR_JUDGING_POINTS) {
            return List.of(GroundFinding.of(Finding.of(FindingKind.SLOPES_UNCERTAIN, where, new SlopePoints(middle))));
        }
        return errors.areasAbove(GOOD_FOR_JUDGING_POINTS).stream()
                .filter(area -> area.squareMetres() >= SMALL_SQUARE_METRES)
                .map(area -> GroundFinding.over(area, badlyKnown(area)))
                .toList();
    }

    private Finding badlyKnown(GroundArea area) {
        return Finding.of(FindingKind.SLOPES_UNCERTAIN_HERE, where, new SlopePoints(area.greatest()))
                .saying(new Area(area.squareMetres()));
    }

    /** The nodes of a grid lie evenly; scattered points may not. */
    private Optional<GroundFinding> uneven() {
        GreenField fewness = new GreenField(hole.green(), spot -> -ground.pointsInDisc(spot));
        double usual = -fewness.quantile(0.5);
        if (-fewness.quantile(1 - UNEVEN_SHARE) >= usual / TIMES_FEWER) {
            return Optional.empty();
        }
        GroundArea thin = fewness.allAbove(-usual / TIMES_FEWER);
        long limit = Math.round(usual / TIMES_FEWER);
        return Optional.of(GroundFinding.over(
                thin,
                Finding.of(FindingKind.POINTS_UNEVEN, where, new Area(thin.squareMetres()))
                        .saying(new Count(limit), new Count(Math.round(usual)))));
    }

    private Optional<GroundFinding> steep() {
        GreenField slopes = new GreenField(
                hole.green(),
                spot -> ground.planeAt(spot).map(PlaneFit::slopePercent).orElse(Double.NaN));
        double middle = slopes.quantile(0.5);
        return middle > 100 * STEEP_SLOPE
                ? Optional.of(GroundFinding.of(Finding.of(FindingKind.HEIGHTS_STEEP, where, new Slope(middle))))
                : Optional.empty();
    }

    /** Each step, the largest first, with the greatest slope of a disc on it. */
    private List<GroundFinding> steps() {
        GreenField slopes = new GreenField(
                hole.green(),
                spot -> ground.planeAt(spot)
                        .filter(plane -> ground.isAtStep(spot))
                        .map(PlaneFit::slopePercent)
                        .orElse(Double.NaN));
        return slopes.areasAbove(0).stream()
                .filter(area -> area.squareMetres() >= SMALL_SQUARE_METRES && area.greatest() >= STEP_PERCENT)
                .map(area -> GroundFinding.over(
                        area,
                        Finding.of(FindingKind.STEP, where, new Slope(area.greatest()))
                                .saying(new Area(area.squareMetres()))))
                .toList();
    }

    /** The farthest off first. */
    private List<GroundFinding> leftOut() {
        return ground.blunders().stream()
                .sorted(Comparator.comparingDouble((Blunder blunder) -> Math.abs(blunder.residualMetres()))
                        .reversed())
                .map(this::leftOut)
                .map(GroundFinding::of)
                .toList();
    }

    private Finding leftOut(Blunder blunder) {
        Translated side = new Translated(blunder.residualMetres() > 0 ? "survey.side.above" : "survey.side.below");
        return Finding.of(FindingKind.POINT_LEFT_OUT, where, new Length(Math.abs(blunder.residualMetres())))
                .saying(side)
                .at(blunder.place());
    }
}
