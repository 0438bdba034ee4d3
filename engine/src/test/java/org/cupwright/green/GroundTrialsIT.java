package org.cupwright.green;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.assertj.core.api.SoftAssertions;
import org.cupwright.testing.Suite;
import org.cupwright.testing.trials.GroundTrial;
import org.cupwright.testing.trials.GroundTrial.Blunders;
import org.cupwright.testing.trials.SharedTrial;
import org.cupwright.testing.trials.SharedTrialErrors;
import org.cupwright.testing.trials.TrialCounts;
import org.cupwright.testing.trials.TrialCounts.Of;
import org.cupwright.testing.trials.TrialCounts.Share;
import org.cupwright.testing.trials.TrialGround;
import org.cupwright.testing.trials.TrialSurvey;
import org.junit.jupiter.api.Test;

/**
 * Ground and surveys as they are found, made by a generator of this suite alone: sharp tiers, fractal ground, lines
 * that are walked, blunders of several kinds. Limits are our own choice; docs/ground-errors.md has figures.
 *
 * <p>Surveys are the sample: a share is held to its limit with two of its own errors at the full count, and with four,
 * and a bit, at a reduced one.
 */
class GroundTrialsIT {
    private static final int FULL = 200;

    /** Surveys a case with shared errors in a reduced run: they are quicker than tiers. */
    private static final int SHARED = 20;

    private final SoftAssertions all = new SoftAssertions();
    private final int surveys = Suite.count("trials of ground, surveys a case", FULL, 4);

    private double room(Share share) {
        return surveys >= FULL ? 2 * share.error() : 4 * share.error() + 0.01;
    }

    private void atLeast(String label, Share share, double limit) {
        all.assertThat(share.value()).as(label + " " + share).isGreaterThanOrEqualTo(limit - room(share));
    }

    private TrialCounts tried(TrialGround ground, TrialSurvey survey, Blunders blunders) {
        int count = blunders == Blunders.NONE ? surveys : Math.max(3, surveys / 10);
        return new GroundTrial(ground, survey, blunders).run(Suite.seed(), count);
    }

    private static String label(TrialGround ground, TrialSurvey survey) {
        return ground + ", " + survey + ", seed " + Suite.seed() + ":";
    }

    @Test
    void atSharpTiersIntervalsHoldTheTruthAndSoundPointsStay() {
        for (TrialGround ground : Set.of(TrialGround.TIER_06, TrialGround.TIER_1)) {
            for (TrialSurvey survey : TrialSurvey.values()) {
                TrialCounts counts = tried(ground, survey, Blunders.NONE);
                String label = label(ground, survey);
                atLeast(label + " slopes", counts.slopesHeld(), 0.94);
                atLeast(label + " changes", counts.changesHeld(), 0.90);
                lost(label, counts, ground == TrialGround.TIER_06 && survey == TrialSurvey.SPARSE_RTK);
            }
        }
        all.assertAll();
    }

    /**
     * One in a thousand at most. Where points stand three quarters of a metre apart a step of 0.6 m lies between two of
     * them, and some of its points cannot be told from blunders.
     */
    private void lost(String label, TrialCounts counts, boolean stepBetweenPoints) {
        Share lost = counts.share(Of.SOUND_LOST, Of.SOUND);
        all.assertThat(lost.value())
                .as(label + " lost " + lost)
                .isLessThanOrEqualTo((stepBetweenPoints ? 0.004 : 0.001) + room(lost));
    }

    @Test
    void onSwellsIntervalsHoldTheTruthAndNoStepIsSeen() {
        for (TrialSurvey survey : TrialSurvey.values()) {
            TrialCounts counts = tried(TrialGround.ROLLING, survey, Blunders.NONE);
            String label = label(TrialGround.ROLLING, survey);
            atLeast(label + " slopes", counts.slopesHeld(), 0.94);
            atLeast(label + " changes", counts.changesHeld(), 0.90);
            lost(label, counts, false);
            all.assertThat(counts.share(Of.STEPS_FOUND, Of.SURVEYS).value())
                    .as(label + " steps")
                    .isLessThanOrEqualTo(0.01);
        }
        all.assertAll();
    }

    @Test
    void blundersAreFoundOnEvenGround() {
        for (TrialSurvey survey : TrialSurvey.values()) {
            for (Blunders blunders : EnumSet.of(Blunders.SINGLE, Blunders.PAIRS, Blunders.FLAGS)) {
                TrialCounts counts = tried(TrialGround.ROLLING, survey, blunders);
                String label = label(TrialGround.ROLLING, survey) + " " + blunders;
                atLeast(label, counts.share(Of.BLUNDERS_FOUND, Of.BLUNDERS), 0.95);
                lost(label, counts, false);
            }
        }
        all.assertAll();
    }

    /** No fit knows of relief finer than its noise shows: what is held here is that slopes are not far off. */
    @Test
    void onFractalGroundSlopesAreHeld() {
        for (TrialSurvey survey : TrialSurvey.values()) {
            TrialCounts counts = tried(TrialGround.FRACTAL, survey, Blunders.NONE);
            atLeast(label(TrialGround.FRACTAL, survey) + " slopes", counts.slopesHeld(), 0.88);
        }
        all.assertAll();
    }

    private SharedTrial.Outcome shared(TrialSurvey survey, SharedTrialErrors errors, SurveyKind kind) {
        return new SharedTrial(survey, errors, kind).run(Suite.seed(), surveys >= FULL ? FULL : SHARED);
    }

    /** Without their shared part the same surveys miss, so that it is known that there is something to hold. */
    @Test
    void errorsThatPointsShareAreHeldByTheKindsDefaultAndBetterAfterSixReadings() {
        Map<TrialSurvey, SurveyKind> kinds = Map.of(
                TrialSurvey.DRONE, SurveyKind.DRONE,
                TrialSurvey.DENSE_RTK, SurveyKind.RTK,
                TrialSurvey.SPARSE_RTK, SurveyKind.RTK);
        kinds.forEach((survey, kind) -> {
            SharedTrialErrors errors = kind == SurveyKind.DRONE ? SharedTrialErrors.PATCHES : SharedTrialErrors.DRIFT;
            String label = survey + " " + errors + ", seed " + Suite.seed() + ":";
            SharedTrial.Outcome said = shared(survey, errors, kind);
            SharedTrial.Outcome unsaid = shared(survey, errors, null);
            atLeast(label + " slopes", said.before().slopesHeld(), 0.90);
            atLeast(label + " slopes after six readings", said.after().slopesHeld(), 0.93);
            all.assertThat(unsaid.before().slopesHeld().value()).as(label).isLessThan(0.93);
            all.assertThat(width(said.after())).as(label + " width").isLessThan(width(said.before()));
        });
        all.assertAll();
    }

    private static double width(TrialCounts counts) {
        return counts.share(Of.WIDTH, Of.SLOPES).value();
    }

    @Test
    void whereNothingIsSharedReadingsMakeItNarrowerAndAKindWithoutSharingCostsNothing() {
        Map<TrialSurvey, SurveyKind> kinds = Map.of(
                TrialSurvey.LIDAR, SurveyKind.LIDAR,
                TrialSurvey.DRONE, SurveyKind.DRONE,
                TrialSurvey.DENSE_RTK, SurveyKind.RTK,
                TrialSurvey.SCAN, SurveyKind.SCAN,
                TrialSurvey.LEVELLED, SurveyKind.LEVELLED);
        kinds.forEach((survey, kind) -> {
            String label = survey + " as " + kind + ", seed " + Suite.seed() + ":";
            SharedTrial.Outcome said = shared(survey, SharedTrialErrors.NONE, kind);
            atLeast(label + " slopes", said.before().slopesHeld(), 0.94);
            atLeast(label + " slopes after six readings", said.after().slopesHeld(), 0.94);
            all.assertThat(width(said.after())).as(label + " width").isLessThanOrEqualTo(width(said.before()));
            if (kind == SurveyKind.LEVELLED) {
                SharedTrial.Outcome unsaid = shared(survey, SharedTrialErrors.NONE, null);
                all.assertThat(width(said.before())).as(label).isLessThanOrEqualTo(1.05 * width(unsaid.before()));
            }
        });
        all.assertAll();
    }

    @Test
    void sixReadingsCorrectATiltOfTheWholeSurvey() {
        for (TrialSurvey survey : Set.of(TrialSurvey.SCAN, TrialSurvey.LEVELLED)) {
            SharedTrial.Outcome outcome = shared(survey, SharedTrialErrors.TILT, SurveyKind.LEVELLED);
            String label = survey + " tilted, seed " + Suite.seed() + ":";
            all.assertThat(outcome.before().slopesHeld().value()).as(label).isLessThan(0.8);
            atLeast(label + " slopes after six readings", outcome.after().slopesHeld(), 0.93);
        }
        all.assertAll();
    }

    /** Six readings cannot tell much: the setting counts for about as much as they do. */
    @Test
    void readingsMeasureTheAmplitude() {
        double none = shared(TrialSurvey.DRONE, SharedTrialErrors.NONE, SurveyKind.DRONE)
                .measured();
        double patches = shared(TrialSurvey.DRONE, SharedTrialErrors.PATCHES, SurveyKind.DRONE)
                .measured();
        assertThat(none).as("none, seed " + Suite.seed()).isLessThan(0.0045);
        assertThat(patches).as("8 mm, seed " + Suite.seed()).isBetween(0.006, 0.0095);
    }

    @Test
    void theSameSeedGivesTheSameCounts() {
        GroundTrial trial = new GroundTrial(TrialGround.TIER_1, TrialSurvey.SPARSE_RTK, Blunders.SINGLE);
        assertThat(trial.run(5, 2)).hasToString(trial.run(5, 2).toString());
    }
}
