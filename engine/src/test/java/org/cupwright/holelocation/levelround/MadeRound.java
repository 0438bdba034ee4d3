package org.cupwright.holelocation.levelround;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.Green;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.GreenLattice;
import org.cupwright.green.Ground;
import org.cupwright.green.LevelReading;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.OnConvention;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.Third;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;
import org.cupwright.holelocation.judging.GreenJudge;
import org.cupwright.holelocation.rule.LevelLimits;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Days;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.ModelGround;
import org.cupwright.testing.RandomGreens;
import org.cupwright.testing.Shapes;
import org.cupwright.testing.TrueDisc;
import org.cupwright.units.Heading;

/** An invented green with a survey like an airborne one, on which a level round can be walked: the truth is known. */
final class MadeRound {
    private static final double SIGMA_METRES = 0.025;
    private static final double PER_SQUARE_METRE = 8;
    private static final double READING_ERROR = 0.001;
    private static final Policy POLICY = Policy.defaults();
    static final DayConditions DAY = Days.dry(10);

    private final LevelLimits limits = LevelLimits.of(DAY, POLICY);
    private final long seed;
    final MadeSurface truth;
    final Green green;
    final SurveyedGround survey;
    private final List<MapPoint> cells = new ArrayList<>();
    private final List<MapPoint> undecided = new ArrayList<>();

    MadeRound(long seed) {
        this.seed = seed;
        SplittableRandom random = new SplittableRandom(seed);
        double radius = 7.5 + 2 * random.nextDouble();
        double longer = 1 + 0.4 * random.nextDouble();
        double turn = Math.PI * random.nextDouble();
        Outline outline = ellipse(radius, radius * longer, turn);
        this.truth = surface(seed, radius * longer);
        Hole hole = RandomGreens.holeOn(outline, Heading.ofDegrees(360 * random.nextDouble()), List.of());
        double half = radius * longer + 2;
        try {
            this.survey = SurveyedGround.fit(
                    outline,
                    new MadeSurvey(truth, -half, -half, half, half, PER_SQUARE_METRE, SIGMA_METRES, seed).points(),
                    POLICY);
        } catch (SurveyTooThin tooThin) {
            throw new IllegalStateException("seed " + seed, tooThin);
        }
        this.green = new Green(hole, survey);
        GreenLattice lattice = GreenLattice.over(outline, 0);
        for (int i = 0; i < lattice.size(); i++) {
            if (outline.contains(lattice.spot(i))
                    && survey.planeAt(lattice.spot(i)).isPresent()) {
                cells.add(lattice.spot(i));
            }
        }
        cells.stream().filter(cell -> !decided(survey, cell)).forEach(undecided::add);
    }

    private static Outline ellipse(double across, double along, double turn) {
        double[] ring = new double[120];
        for (int i = 0; i < 60; i++) {
            double x = across * StrictMath.cos(Math.PI * i / 30);
            double y = along * StrictMath.sin(Math.PI * i / 30);
            ring[2 * i] = x * StrictMath.cos(turn) - y * StrictMath.sin(turn);
            ring[2 * i + 1] = x * StrictMath.sin(turn) + y * StrictMath.cos(turn);
        }
        return Shapes.polygon(ring);
    }

    /** Up to 3.5 % of tilt and eight bumps and hollows of up to 5 to 20 cm, two to five metres in standard width. */
    private static MadeSurface surface(long seed, double reach) {
        Random random = new Random(seed);
        List<MadeSurface.Bump> bumps = new ArrayList<>();
        double greatest = 0.05 + 0.15 * random.nextDouble();
        for (int i = 0; i < 8; i++) {
            double east = reach * (2 * random.nextDouble() - 1);
            double north = reach * (2 * random.nextDouble() - 1);
            bumps.add(new MadeSurface.Bump(
                    east, north, greatest * (2 * random.nextDouble() - 1), 2 + 3 * random.nextDouble()));
        }
        double tilt = 0.035 * random.nextDouble();
        double turn = 2 * Math.PI * random.nextDouble();
        return new MadeSurface(0, tilt * StrictMath.cos(turn), tilt * StrictMath.sin(turn), bumps, List.of());
    }

    boolean decided(Ground ground, MapPoint cell) {
        PlaneFit plane = ground.planeAt(cell).orElseThrow();
        return limits.decides(plane.slopePercent(), 100 * plane.slopeStandardError());
    }

    double undecidedShare() {
        return (double) undecided.size() / cells.size();
    }

    double undecidedSquareMetres() {
        return undecided.size() * GreenLattice.CELL_METRES * GreenLattice.CELL_METRES;
    }

    /** The survey after the level was laid at some places: true slopes with errors of 0.1 point. */
    SurveyedGround read(List<MapPoint> places) {
        Random random = new Random(seed + 77);
        List<LevelReading> readings = new ArrayList<>();
        for (MapPoint place : places) {
            TrueDisc disc = TrueDisc.of(truth, place.east(), place.north(), Ground.DISC_RADIUS_METRES);
            readings.add(new LevelReading(
                    place,
                    disc.gradientEast() + READING_ERROR * random.nextGaussian(),
                    disc.gradientNorth() + READING_ERROR * random.nextGaussian(),
                    READING_ERROR));
        }
        return survey.withReadings(readings);
    }

    /** Ground that had no answer before and has one now, spot by spot, m². */
    double newlyDecidedSquareMetres(Ground after) {
        long count = undecided.stream().filter(cell -> decided(after, cell)).count();
        return count * GreenLattice.CELL_METRES * GreenLattice.CELL_METRES;
    }

    LevelRound open(int spots) {
        return new LevelRounds(green, survey, DAY, POLICY).forOpenGround(spots);
    }

    LevelRound plan(int spots) {
        return new LevelRounds(green, survey, DAY, POLICY).forPlan(spots);
    }

    /** So many places on a square grid about the centroid, turned as the course's frame is. */
    List<MapPoint> regularGrid(int spots) {
        Outline outline = green.hole().green();
        MapPoint middle = outline.centroid();
        double spacing = Math.sqrt(outline.areaSquareMetres() / spots);
        while (true) {
            List<MapPoint> inside = new ArrayList<>();
            for (int i = -5; i <= 5; i++) {
                for (int j = -5; j <= 5; j++) {
                    MapPoint point = new MapPoint(middle.east() + (i + 0.5) * spacing, middle.north() + j * spacing);
                    if (outline.contains(point)) {
                        inside.add(point);
                    }
                }
            }
            if (inside.size() >= spots) {
                inside.sort(Comparator.comparingDouble(middle::distanceMetres));
                return inside.subList(0, spots);
            }
            spacing *= 0.98;
        }
    }

    /** Each place moved to the nearest undecided spot that no other was moved to. */
    List<MapPoint> moved(List<MapPoint> places) {
        List<MapPoint> moved = new ArrayList<>();
        for (MapPoint place : places) {
            undecided.stream()
                    .filter(cell -> !moved.contains(cell))
                    .min(Comparator.comparingDouble(place::distanceMetres))
                    .ifPresent(moved::add);
        }
        return moved;
    }

    /** Thirds that truly have a position that passes all rules. */
    Set<Third> thirdsWithGood() {
        return thirds(ModelGround.exact(truth), judgement -> judgement.verdict() == Verdict.PASS);
    }

    /** Thirds in which level ground is known at a position, with the ground about it, that truly passes all rules. */
    Set<Third> thirdsKnown(SurveyedGround after) {
        GreenJudge truly = judge(ModelGround.exact(truth));
        return thirds(
                after,
                judgement -> judgement.verdict() != Verdict.FAIL
                        && judgement.rule(RuleId.LEVEL).outcome() == Outcome.PASS
                        && truly.judge(judgement.position()).verdict() == Verdict.PASS);
    }

    private GreenJudge judge(Ground ground) {
        return new GreenJudge(new Green(green.hole(), ground), DAY, POLICY);
    }

    private Set<Third> thirds(Ground ground, Predicate<Judgement> good) {
        GreenFrame frame = GreenFrame.of(green.hole(), OnConvention.ALONG_CHORD).orElseThrow();
        GreenJudge judge = judge(ground);
        Set<Third> thirds = EnumSet.noneOf(Third.class);
        for (MapPoint cell : cells) {
            Third third = frame.place(cell).third();
            if (!thirds.contains(third) && good.test(judge.judge(cell))) {
                thirds.add(third);
            }
        }
        return thirds;
    }

    @Override
    public String toString() {
        return "green of seed " + seed;
    }
}
