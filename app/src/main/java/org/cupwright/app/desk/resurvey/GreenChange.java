package org.cupwright.app.desk.resurvey;

import java.util.List;
import org.cupwright.app.storage.SurveyVersion;
import org.cupwright.course.Hole;
import org.cupwright.green.resurvey.Resurvey;

/**
 * What changed on a green between two surveys.
 *
 * @param hole the hole
 * @param before the earlier survey
 * @param now the newest survey, the one that counts
 * @param report heights, volumes and slopes by the surveys alone
 * @param good where a hole may be cut
 * @param olderReadings the numbers of level readings that were kept before the newest survey came in
 */
public record GreenChange(
        Hole hole,
        SurveyVersion before,
        SurveyVersion now,
        Resurvey report,
        GoodGround good,
        List<Integer> olderReadings) {
    /**
     * Where so much of the ground has moved one way, the surveys' levels are likelier to differ than the ground: our
     * choice.
     */
    private static final double NEARLY_ALL = 0.8;

    /** Less than this is not worth the question, m: our choice, what mowing and topdressing come to in a season. */
    private static final double LEAST_METRES = 0.01;

    public GreenChange {
        olderReadings = List.copyOf(olderReadings);
    }

    /** Whether the whole green has come up or down so evenly that the levels of the two surveys may differ. */
    public boolean levelsMayDiffer() {
        double moved = report.changedSquareMetres() / Math.max(report.comparedSquareMetres(), 1e-9);
        return moved > NEARLY_ALL
                && report.heights()
                        .middle()
                        .filter(middle -> Math.abs(middle.metres()) > LEAST_METRES)
                        .isPresent();
    }
}
