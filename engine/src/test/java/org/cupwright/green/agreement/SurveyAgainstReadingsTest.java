package org.cupwright.green.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.green.LevelReading;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Direction;
import org.cupwright.message.Message.SlopePoints;
import org.cupwright.message.Message.Translated;
import org.cupwright.policy.Policy;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** An invented green that was surveyed, to a millimetre, as a plane; what a level reads on it is worked out by hand. */
class SurveyAgainstReadingsTest {
    private static final Outline GREEN = Shapes.rectangle(0, 0, 10, 10);
    private static final Hole HOLE =
            Hole.of("7", GREEN).withLineOfPlay(new LineOfPlay(List.of(new MapPoint(5, -200), new MapPoint(5, 5))));
    private static final double EAST = 0.01;
    private static final double NORTH = 0.02;

    /** Four places about the middle of the green, each three metres from it east or west and north or south. */
    private static final List<MapPoint> PLACES =
            List.of(new MapPoint(2, 2), new MapPoint(8, 2), new MapPoint(2, 8), new MapPoint(8, 8));

    private final SurveyedGround survey = survey();

    private static SurveyedGround survey() {
        try {
            return SurveyedGround.fit(
                    GREEN,
                    new MadeSurvey(MadeSurface.plane(EAST, NORTH), -1, -1, 11, 11, 9, 0.001, 5).points(),
                    Policy.defaults());
        } catch (SurveyTooThin tooThin) {
            throw new IllegalStateException(tooThin);
        }
    }

    /** What is read when the ground rises so much more than the survey says, with a dome about the middle besides. */
    private static List<LevelReading> read(double moreEast, double moreNorth, double perMetre) {
        return PLACES.stream()
                .map(at -> new LevelReading(
                        at,
                        EAST + moreEast + perMetre * (at.east() - 5),
                        NORTH + moreNorth + perMetre * (at.north() - 5),
                        0.001))
                .toList();
    }

    @Test
    void aTiltIsToldInPointsAndTheWayItFalls() {
        SurveyAgainstReadings tilted = SurveyAgainstReadings.of(survey, read(0.006, -0.008, 0));
        assertThat(tilted.count()).isEqualTo(4);
        assertThat(tilted.middle()).isEqualTo(new MapPoint(5, 5));
        assertThat(tilted.tiltEastPoints()).isCloseTo(0.6, within(0.03));
        assertThat(tilted.tiltNorthPoints()).isCloseTo(-0.8, within(0.03));
        assertThat(tilted.tiltPoints()).isCloseTo(1, within(0.03));
        assertThat(tilted.isDomed()).isFalse();
        // each reading to 0.001, the survey to much less: (0.006² + 0.008²) ÷ (0.001² ÷ 4) = 400
        assertThat(tilted.tiltChiSquare()).isBetween(250.0, 400.0);
        List<Finding> findings = tilted.findings(HOLE);
        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).kind()).isEqualTo(FindingKind.SURVEY_TILTED);
        assertThat(((SlopePoints) findings.get(0).value()).points()).isEqualTo(tilted.tiltPoints());
        Direction falls = (Direction) findings.get(0).details().get(0);
        // down against the rise: 0.6 to the west and 0.8 to the north
        assertThat(falls.heading().degrees()).isCloseTo(323.1, within(2.0));
        assertThat(findings.get(0).details().get(1)).isEqualTo(new Count(4));
        assertThat(findings.get(0).place()).contains(new MapPoint(5, 5));
    }

    @Test
    void aDomeIsToldAtFiveMetres() {
        SurveyAgainstReadings bowl = SurveyAgainstReadings.of(survey, read(0, 0, 0.002));
        assertThat(bowl.domePointsPerMetre()).isCloseTo(0.2, within(0.01));
        assertThat(bowl.isDomed()).isTrue();
        assertThat(bowl.isTilted()).isFalse();
        Finding told = bowl.findings(HOLE).get(0);
        assertThat(told.kind()).isEqualTo(FindingKind.SURVEY_DOMED);
        assertThat(((SlopePoints) told.value()).points()).isCloseTo(1, within(0.05));
        assertThat(told.details()).containsExactly(new Translated("survey.shape.bowl"), new Count(4));
        Finding crown = SurveyAgainstReadings.of(survey, read(0, 0, -0.002))
                .findings(HOLE)
                .get(0);
        assertThat(crown.details().get(0)).isEqualTo(new Translated("survey.shape.crown"));
        // eight numbers, each three metres out, read to 0.001: (0.002 · 3)² · 8 ÷ 0.001² = 288
        assertThat(bowl.domeChiSquare()).isBetween(180.0, 288.0);
    }

    @Test
    void bothAreToldTheTiltFirst() {
        assertThat(SurveyAgainstReadings.of(survey, read(0.01, 0, 0.002)).findings(HOLE))
                .extracting(Finding::kind)
                .containsExactly(FindingKind.SURVEY_TILTED, FindingKind.SURVEY_DOMED);
    }

    /** However sure: a fifth of a point is not worth a word, three tenths are. */
    @Test
    void littleIsNotToldHoweverSure() {
        assertThat(SurveyAgainstReadings.of(survey, read(0.002, 0, 0)).findings(HOLE))
                .isEmpty();
        assertThat(SurveyAgainstReadings.of(survey, read(0.003, 0, 0)).isTilted())
                .isTrue();
        assertThat(SurveyAgainstReadings.of(survey, read(0, 0, 0.0004)).findings(HOLE))
                .isEmpty();
        assertThat(SurveyAgainstReadings.of(survey, read(0, 0, 0.0006)).isDomed())
                .isTrue();
    }

    /** However much: a rough level proves nothing. */
    @Test
    void muchIsNotToldWhereChanceExplainsIt() {
        List<LevelReading> rough = read(0.01, 0, 0.002).stream()
                .map(one -> new LevelReading(one.place(), one.gradientEast(), one.gradientNorth(), 0.02))
                .toList();
        SurveyAgainstReadings compared = SurveyAgainstReadings.of(survey, rough);
        assertThat(compared.tiltPoints()).isCloseTo(1, within(0.05));
        assertThat(compared.findings(HOLE)).isEmpty();
    }

    @Test
    void fewReadingsAndThoseOffTheGreenSayNothing() {
        List<LevelReading> all = read(0.02, 0, 0);
        SurveyAgainstReadings two = SurveyAgainstReadings.of(survey, all.subList(0, 2));
        assertThat(two.count()).isEqualTo(2);
        assertThat(two.middle()).isEqualTo(new MapPoint(5, 2));
        assertThat(two.findings(HOLE)).isEmpty();
        assertThat(SurveyAgainstReadings.of(survey, all.subList(0, 3)).isTilted())
                .isTrue();
        LevelReading off = new LevelReading(new MapPoint(40, 40), 0, 0, 0.001);
        assertThat(SurveyAgainstReadings.of(
                                survey,
                                Stream.concat(all.stream(), Stream.of(off)).toList())
                        .count())
                .isEqualTo(4);
        assertThat(SurveyAgainstReadings.of(survey, List.of()).middle()).isEqualTo(new MapPoint(0, 0));
    }
}
