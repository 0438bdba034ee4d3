package org.cupwright.rotation;

import java.util.List;
import org.cupwright.green.Third;
import org.cupwright.policy.Setting;
import org.cupwright.policy.SettingType;
import org.cupwright.policy.SourceKind;

/**
 * What the course may decide about the day's plan. Weights are points for each metre or hole of the term they are
 * named after.
 */
public final class RotationPolicy {
    public static final Setting<Scheme> SCHEME = new Setting<>(
            "rotation.scheme",
            SettingType.oneOf(Scheme.class),
            "",
            Scheme.SIX_SIX_SIX,
            SourceKind.COMMON_PRACTICE,
            "six each of front, middle and back over eighteen; that front and back be balanced is R&A and USGA advice"
                    + " (read in a copy)");

    public static final Setting<List<Third>> THIRDS_ALLOWED = new Setting<>(
            "rotation.thirdsAllowed",
            SettingType.ranking(Third.class),
            "",
            List.of(Third.values()),
            SourceKind.OURS,
            "our choice: all three, until the course leaves one out; none named means all");

    public static final Setting<Double> YESTERDAY_LEAST_METRES = new Setting<>(
            "rotation.yesterdayLeastMetres",
            SettingType.number(0, 30),
            "m",
            5.0,
            SourceKind.OURS,
            "our choice: a little more than the 16 ft between resting areas (Lemons, USGA Green Section Record, 2008)");

    public static final Setting<Double> YESTERDAY_ENOUGH_METRES = new Setting<>(
            "rotation.yesterdayEnoughMetres",
            SettingType.number(0, 60),
            "m",
            10.0,
            SourceKind.OURS,
            "our choice: twice the least distance; farther is no better");

    public static final Setting<Double> SHARED_GREEN_LEAST_METRES = new Setting<>(
            "rotation.sharedGreenLeastMetres",
            SettingType.number(0, 60),
            "m",
            18.3,
            SourceKind.OURS,
            "our choice: twenty paces, so that two groups on a double green do not stand in each other's way");

    public static final Setting<Double> SHARED_GREEN_NEVER_NEARER_METRES = new Setting<>(
            "rotation.sharedGreenNeverNearerMetres",
            SettingType.number(0, 60),
            "m",
            9.15,
            SourceKind.OURS,
            "our choice: half of what is wanted; nearer only where the green has no two spots so far apart");

    public static final Setting<Integer> LEFT_RIGHT_APART = new Setting<>(
            "rotation.leftRightApart",
            SettingType.wholeNumber(0, 18),
            "holes",
            2,
            SourceKind.OURS,
            "our choice of number; that left and right be balanced is R&A and USGA advice (read in a copy)");

    public static final Setting<Double> ROOM_ENOUGH_METRES = new Setting<>(
            "rotation.roomEnoughMetres",
            SettingType.number(0, 3),
            "m",
            1.83,
            SourceKind.OURS,
            "our choice: two paces each way, so that a spot paced out a step wrong is still good");

    public static final Setting<Double> CANDIDATE_SQUARE_METRES = new Setting<>(
            "rotation.candidateSquareMetres",
            SettingType.number(0.25, 5),
            "m",
            1.0,
            SourceKind.OURS,
            "our choice: nobody paces finer; some three hundred candidates a green");

    public static final Setting<Double> WEIGHT_NEAR_YESTERDAY = weight(
            "nearYesterday",
            "points/m",
            20,
            "our choice: half a metre short of the least distance weighs as much as a hole off the lateral balance");

    public static final Setting<Double> WEIGHT_CLOSE_TO_YESTERDAY =
            weight("closeToYesterday", "points/m", 1, "our choice: a mild wish, beyond the least distance");

    public static final Setting<Double> WEIGHT_CARE = weight(
            "care",
            "points/hole",
            45,
            "our choice: rather two holes off the balance and one without room than one spot to be used with care");

    public static final Setting<Double> WEIGHT_DOUBTFUL = weight(
            "doubtful",
            "points/hole",
            60,
            "our choice: on top of care, as much as a hole too many on one side; "
                    + "nobody trusts a spot he can see is wrong");

    public static final Setting<Double> WEIGHT_NOT_VOUCHED_FOR = weight(
            "notVouchedFor",
            "points/hole",
            20,
            "our choice: where nobody measured, a person's word is worth two holes off the spread across, "
                    + "less than care");

    public static final Setting<Double> WEIGHT_NO_ROOM = weight(
            "noRoom",
            "points/hole",
            15,
            "our choice: as much as a hole off the spread of difficulty; nobody paces to less than half a pace");

    public static final Setting<Double> WEIGHT_LITTLE_ROOM = weight(
            "littleRoom",
            "points/m",
            5,
            "our choice: a spot with no room at all weighs less than a hole off the balance");

    public static final Setting<Double> WEIGHT_LEFT_RIGHT =
            weight("leftRight", "points/hole", 60, "our choice: the most visible imbalance, so the heaviest");

    public static final Setting<Double> WEIGHT_LATERAL = weight(
            "lateral", "points/hole", 10, "our choice: thirds across are a wish, left against right is the rule");

    public static final Setting<Double> WEIGHT_DIFFICULTY = weight(
            "difficulty",
            "points/hole",
            15,
            "our choice of weight; six easier, six medium and six harder is R&A and USGA advice (read in a copy)");

    private RotationPolicy() {}

    private static Setting<Double> weight(String term, String unit, double points, String source) {
        return new Setting<>(
                "rotation.weight." + term, SettingType.number(0, 1000), unit, points, SourceKind.OURS, source);
    }

    /** All of them, for the catalogue. */
    public static List<Setting<?>> settings() {
        return List.of(
                SCHEME,
                THIRDS_ALLOWED,
                YESTERDAY_LEAST_METRES,
                YESTERDAY_ENOUGH_METRES,
                SHARED_GREEN_LEAST_METRES,
                SHARED_GREEN_NEVER_NEARER_METRES,
                LEFT_RIGHT_APART,
                ROOM_ENOUGH_METRES,
                CANDIDATE_SQUARE_METRES,
                WEIGHT_NEAR_YESTERDAY,
                WEIGHT_CLOSE_TO_YESTERDAY,
                WEIGHT_CARE,
                WEIGHT_DOUBTFUL,
                WEIGHT_NOT_VOUCHED_FOR,
                WEIGHT_NO_ROOM,
                WEIGHT_LITTLE_ROOM,
                WEIGHT_LEFT_RIGHT,
                WEIGHT_LATERAL,
                WEIGHT_DIFFICULTY);
    }
}
