package org.cupwright.rotation;

import static org.cupwright.policy.SettingType.number;
import static org.cupwright.policy.SettingType.oneOf;
import static org.cupwright.policy.SettingType.ranking;
import static org.cupwright.policy.SettingType.wholeNumber;

import java.util.List;
import org.cupwright.green.Third;
import org.cupwright.policy.Setting;
import org.cupwright.policy.Slice;

/**
 * What the course may decide about the day's plan. Weights are points for each metre or hole of the term they are
 * named after.
 */
public final class RotationPolicy {
    private static final Slice SLICE = new Slice("rotation");

    public static final Setting<Scheme> SCHEME = SLICE.setting("scheme", oneOf(Scheme.class), "", Scheme.SIX_SIX_SIX)
            .commonPractice("six each of front, middle and back over eighteen; that front and back be balanced "
                    + "is R&A and USGA advice"
                    + " (read in a copy)");

    public static final Setting<List<Third>> THIRDS_ALLOWED = SLICE.setting(
                    "thirdsAllowed", ranking(Third.class), "", List.of(Third.values()))
            .ours("all three, until the course leaves one out");

    public static final Setting<Double> YESTERDAY_LEAST_METRES = SLICE.setting(
                    "yesterdayLeastMetres", number(0, 30), "m", 5.0)
            .ours("a little more than the 16 ft between resting areas " + "(Lemons, USGA Green Section Record, 2008)");

    public static final Setting<Double> YESTERDAY_ENOUGH_METRES = SLICE.setting(
                    "yesterdayEnoughMetres", number(0, 60), "m", 10.0)
            .ours("twice the least distance; farther is no better");

    public static final Setting<Double> SHARED_GREEN_LEAST_METRES = SLICE.setting(
                    "sharedGreenLeastMetres", number(0, 60), "m", 18.3)
            .ours("twenty paces, so that two groups on a double green do not stand in each other's way");

    public static final Setting<Double> SHARED_GREEN_NEVER_NEARER_METRES = SLICE.setting(
                    "sharedGreenNeverNearerMetres", number(0, 60), "m", 9.15)
            .ours("half of what is wanted; nearer only where the green has no two spots so far apart");

    public static final Setting<Integer> LEFT_RIGHT_APART = SLICE.setting(
                    "leftRightApart", wholeNumber(0, 18), "holes", 2)
            .ours("that left and right be balanced is R&A and USGA advice (read in a copy)");

    public static final Setting<Double> ROOM_ENOUGH_METRES = SLICE.setting("roomEnoughMetres", number(0, 3), "m", 1.83)
            .ours("two paces each way, so that a spot paced out a step wrong is still good");

    public static final Setting<Double> CANDIDATE_SQUARE_METRES = SLICE.setting(
                    "candidateSquareMetres", number(0.25, 5), "m", 1.0)
            .ours("nobody paces finer; some three hundred candidates a green");

    public static final Setting<Double> WEIGHT_NEAR_YESTERDAY = weight(
            "nearYesterday",
            "points/m",
            20,
            "half a metre short of the least distance weighs as much as a hole off the lateral balance");

    public static final Setting<Double> WEIGHT_CLOSE_TO_YESTERDAY =
            weight("closeToYesterday", "points/m", 1, "a mild wish, beyond the least distance");

    public static final Setting<Double> WEIGHT_SAME_THIRD = weight(
            "sameThird",
            "points/hole",
            20,
            "as much as a metre short of the least distance; the old hole may be anywhere in that third");

    public static final Setting<Double> WEIGHT_CARE = weight(
            "care",
            "points/hole",
            45,
            "rather two holes off the balance and one without room than one spot to be used with care");

    public static final Setting<Double> WEIGHT_DOUBTFUL = weight(
            "doubtful",
            "points/hole",
            60,
            "on top of care, as much as a hole too many on one side; " + "nobody trusts a spot he can see is wrong");

    public static final Setting<Double> WEIGHT_NOT_VOUCHED_FOR = weight(
            "notVouchedFor",
            "points/hole",
            20,
            "where nobody measured, a person's word is worth two holes off the spread across, " + "less than care");

    public static final Setting<Double> WEIGHT_NO_ROOM = weight(
            "noRoom",
            "points/hole",
            15,
            "as much as a hole off the spread of difficulty; nobody paces to less than half a pace");

    public static final Setting<Double> WEIGHT_LITTLE_ROOM =
            weight("littleRoom", "points/m", 5, "a spot with no room at all weighs less than a hole off the balance");

    public static final Setting<Double> WEIGHT_LEFT_RIGHT =
            weight("leftRight", "points/hole", 60, "the most visible imbalance, so the heaviest");

    public static final Setting<Double> WEIGHT_LATERAL =
            weight("lateral", "points/hole", 10, "thirds across are a wish, left against right is the rule");

    public static final Setting<Double> WEIGHT_DIFFICULTY = weight(
            "difficulty",
            "points/hole",
            15,
            "six easier, six medium and six harder is R&A and USGA advice (read in a copy)");

    private RotationPolicy() {}

    private static Setting<Double> weight(String term, String unit, double points, String source) {
        return SLICE.setting("weight." + term, number(0, 1000), unit, points).ours(source);
    }

    /** All of them, for the catalogue. */
    public static List<Setting<?>> settings() {
        return SLICE.settings();
    }
}
