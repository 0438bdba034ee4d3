package org.cupwright.app.field.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Degrees as a phone gives them, and where in a green's frame that is: greens from the equator to 62 degrees, on both
 * halves of the Earth, in the middle of zones and at their borders, phones up to sixty metres from the middle.
 */
final class PhoneCases {
    private static final int GREENS = 40;
    private static final int PHONES = 10;
    private static final double STEP = 1e-4;
    private static final double METRES_A_DEGREE = 111_000;
    private static final double FARTHEST = 60;

    private PhoneCases() {}

    static List<String> lines() {
        List<String> lines = new ArrayList<>();
        Random random = new Random(470_000);
        for (int i = 0; i < GREENS; i++) {
            int zone = 1 + random.nextInt(60);
            boolean south = i % 3 == 2;
            double off = i % 4 == 0 ? (i % 8 == 0 ? 2.999 : -2.999) : 6 * random.nextDouble() - 3;
            green((south ? 32_700 : 32_600) + zone, degrees(6 * zone - 183 + off), south, random, lines);
        }
        return lines;
    }

    private static void green(int epsg, double longitude, boolean south, Random random, List<String> lines) {
        double latitude = degrees((south ? -1 : 1) * 62 * random.nextDouble());
        double heading = Case.asWritten(360 * random.nextDouble());
        double[] middle = SlowMercator.utm(epsg, longitude, latitude);
        double[] east = slope(epsg, longitude, latitude, STEP, 0, heading);
        double[] north = slope(epsg, longitude, latitude, 0, STEP, heading);
        lines.add("green epsg=" + epsg + " heading=" + Case.written(heading) + " middle=" + Case.written(middle)
                + " world=" + longitude + "," + latitude + "," + Case.written(east[0], north[0], east[1], north[1]));
        for (int found = 0; found < PHONES; ) {
            double lat = degrees(latitude + FARTHEST / METRES_A_DEGREE * (2 * random.nextDouble() - 1));
            double wide = FARTHEST / METRES_A_DEGREE / StrictMath.cos(StrictMath.toRadians(latitude));
            double lon = degrees(longitude + wide * (2 * random.nextDouble() - 1));
            double[] at = SlowPlane.inFrame(SlowMercator.utm(epsg, lon, lat), middle, heading);
            if (StrictMath.hypot(at[0], at[1]) <= FARTHEST) {
                lines.add("phone lon=" + lon + " lat=" + lat + " at=" + Case.written(at));
                found++;
            }
        }
    }

    /** Metres to the right and on a degree. */
    private static double[] slope(int epsg, double lon, double lat, double dLon, double dLat, double heading) {
        double[] to = SlowMercator.utm(epsg, lon + dLon, lat + dLat);
        double[] from = SlowMercator.utm(epsg, lon - dLon, lat - dLat);
        double[] moved = SlowPlane.inFrame(to, from, heading);
        return new double[] {moved[0] / (2 * (dLon + dLat)), moved[1] / (2 * (dLon + dLat))};
    }

    private static double degrees(double value) {
        return Double.parseDouble(String.format(Locale.ROOT, "%.9f", value));
    }
}
