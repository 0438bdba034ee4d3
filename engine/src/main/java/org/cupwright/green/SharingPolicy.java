package org.cupwright.green;

import static org.cupwright.policy.SettingType.number;

import java.util.List;
import org.cupwright.policy.Policy;
import org.cupwright.policy.Setting;
import org.cupwright.policy.SettingType;
import org.cupwright.policy.Slice;

/** What the points of each kind of survey are taken to share of their errors. */
public final class SharingPolicy {
    private static final Slice SLICE = new Slice("ground");
    private static final SettingType<Double> MILLIMETRES = number(0, 100);
    private static final SettingType<Double> LENGTH = number(2, 500);

    public static final Setting<Double> LIDAR_MILLIMETRES = amount("LidarMillimetres", MILLIMETRES, 10)
            .ours("a strip's tilt and where strips meet; a twentieth of a point of slope");

    public static final Setting<Double> LIDAR_LENGTH_METRES =
            amount("LidarLengthMetres", LENGTH, 20).ours("about the width of a green");

    public static final Setting<Double> DRONE_MILLIMETRES = amount("DroneMillimetres", MILLIMETRES, 8)
            .ours("what matching photographs of plain turf leaves in patches");

    public static final Setting<Double> DRONE_LENGTH_METRES =
            amount("DroneLengthMetres", LENGTH, 3).ours("the patches are some metres wide");

    public static final Setting<Double> RTK_MILLIMETRES =
            amount("RtkMillimetres", MILLIMETRES, 8).ours("how far a receiver's height drifts in minutes");

    public static final Setting<Double> RTK_LENGTH_METRES =
            amount("RtkLengthMetres", LENGTH, 60).ours("what is walked in a minute or two, measured along the walk");

    public static final Setting<Double> SCAN_MILLIMETRES =
            amount("ScanMillimetres", MILLIMETRES, 2).ours("what joining set-ups of a scanner leaves");

    public static final Setting<Double> SCAN_LENGTH_METRES =
            amount("ScanLengthMetres", LENGTH, 10).ours("how far one set-up sees well");

    public static final Setting<Double> LEVELLED_MILLIMETRES =
            amount("LevelledMillimetres", MILLIMETRES, 0).ours("each point is sighted by itself from one set-up");

    public static final Setting<Double> LEVELLED_LENGTH_METRES =
            amount("LevelledLengthMetres", LENGTH, 10).ours("counts only where the amplitude is set above 0");

    /** In place of a walk where the points' order in the file is no walk, m (our choice). */
    static final double NO_WALK_LENGTH_METRES = 3;

    private SharingPolicy() {}

    private static Slice.Unsourced<Double> amount(String key, SettingType<Double> type, double value) {
        return SLICE.setting("shared" + key, type, type == MILLIMETRES ? "mm" : "m", value);
    }

    /** What the points of a survey share as it is set for its kind; nothing where they have none. */
    public static Sharing of(SurveyPoints points, Policy policy) {
        return points.kind().map(kind -> of(kind, points, policy)).orElse(Sharing.NONE);
    }

    /** The same, with what strips of the survey have measured of it. */
    public static MeasuredSharing known(SurveyPoints points, Policy policy) {
        Sharing set = of(points, policy);
        return points.measured()
                .map(measured -> MeasuredSharing.byStrips(set, measured))
                .orElseGet(() -> MeasuredSharing.asSet(set));
    }

    private static Sharing of(SurveyKind kind, SurveyPoints points, Policy policy) {
        return switch (kind) {
            case LIDAR -> over(policy, LIDAR_MILLIMETRES, LIDAR_LENGTH_METRES);
            case DRONE -> over(policy, DRONE_MILLIMETRES, DRONE_LENGTH_METRES);
            case RTK -> walked(points, policy);
            case SCAN -> over(policy, SCAN_MILLIMETRES, SCAN_LENGTH_METRES);
            case LEVELLED -> over(policy, LEVELLED_MILLIMETRES, LEVELLED_LENGTH_METRES);
        };
    }

    private static Sharing over(Policy policy, Setting<Double> millimetres, Setting<Double> length) {
        return new Sharing(policy.get(millimetres) / 1000, policy.get(length), false);
    }

    private static Sharing walked(SurveyPoints points, Policy policy) {
        double sigma = policy.get(RTK_MILLIMETRES) / 1000;
        return Walk.isWalked(points)
                ? new Sharing(sigma, policy.get(RTK_LENGTH_METRES), true)
                : new Sharing(sigma, NO_WALK_LENGTH_METRES, false);
    }

    public static List<Setting<?>> settings() {
        return SLICE.settings();
    }
}
