package org.cupwright.democourse;

import static org.cupwright.course.Hazard.Kind.BUNKER;
import static org.cupwright.course.Hazard.Kind.FALL_OFF;
import static org.cupwright.course.Hazard.Kind.WATER;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.democourse.DemoHole.Bank;
import org.cupwright.democourse.DemoHole.Beside;
import org.cupwright.democourse.DemoHole.Feature;
import org.cupwright.democourse.DemoHole.Known;
import org.cupwright.democourse.DemoHole.Rise;
import org.cupwright.democourse.DemoHole.Shape;
import org.cupwright.democourse.DemoHole.Tilt;

/** The eighteen invented holes, in round order, each with a character of its own. */
final class DemoHoles {
    private DemoHoles() {}

    static List<DemoHole> all() {
        return List.of(
                tiltedToFront(),
                tiered(),
                bowl(),
                crowned(),
                falseFront(),
                verySmall(),
                spine(),
                sideTilt(),
                doubleGreen("9", 5, 470, 220, 290, 30),
                outlineOnlyKidney(),
                tiltedAcross(),
                runsOutWhenFast(),
                outlineOnlyRound(),
                levelSpotsLong(),
                veryLarge(),
                levelSpotsBehindWater(),
                saddle(),
                doubleGreen("18", 5, 590, -80, 330, -150));
    }

    private static List<MapPoint> line(double... eastNorth) {
        List<MapPoint> points = new ArrayList<>();
        for (int i = 0; i < eastNorth.length; i += 2) {
            points.add(new MapPoint(eastNorth[i], eastNorth[i + 1]));
        }
        return points;
    }

    private static List<Feature> ground(Feature... features) {
        return List.of(features);
    }

    private static DemoHole tiltedToFront() {
        return new DemoHole(
                "1",
                4,
                line(40, 20, 95, 395),
                new Shape(13.5, 11.5, 0.05, 40, 0.03, 100),
                ground(new Tilt(0.3, 1.7), new Rise(-4, 5, 0.06, 5)),
                List.of(new Beside(BUNKER, -75, 2.5, 9)),
                Known.SURVEY,
                60);
    }

    private static DemoHole tiered() {
        return new DemoHole(
                "2",
                4,
                line(150, 420, 215, 75),
                new Shape(17.5, 11.8, 0.04, 0, 0.02, 20),
                ground(new Tilt(-0.5, 1.1), new Bank(0, 1.5, 8, 0.38, 4.2)),
                List.of(new Beside(BUNKER, 95, 2, 8), new Beside(BUNKER, -120, 3, 7)),
                Known.SURVEY,
                -90);
    }

    private static DemoHole bowl() {
        return new DemoHole(
                "3",
                3,
                line(275, 60, 330, 205),
                new Shape(12.5, 12, 0.03, 70, 0.03, 30),
                ground(new Tilt(0.6, 0.9), new Rise(0, 0, -0.16, 6.5)),
                List.of(new Beside(FALL_OFF, 150, 1.5, 10)),
                Known.SURVEY,
                120);
    }

    private static DemoHole crowned() {
        return new DemoHole(
                "4",
                4,
                line(370, 250, 420, 640),
                new Shape(13, 13, 0.02, 0, 0.04, 60),
                ground(new Tilt(-0.3, 0.3), new Rise(0, 0, 0.24, 9)),
                List.of(new Beside(FALL_OFF, 90, 1, 12), new Beside(FALL_OFF, -90, 1, 12)),
                Known.SURVEY,
                180);
    }

    private static DemoHole falseFront() {
        return new DemoHole(
                "5",
                4,
                line(360, 690, 200, 620, 60, 480),
                new Shape(15, 12, 0.04, 20, 0.02, 0),
                ground(new Tilt(0.7, 1.2), new Bank(0, -12.5, 0, 0.55, 5)),
                List.of(new Beside(BUNKER, 55, 2.5, 8)),
                Known.SURVEY,
                -45);
    }

    private static DemoHole verySmall() {
        return new DemoHole(
                "6",
                3,
                line(20, 520, -60, 640),
                new Shape(10.4, 10.2, 0.01, 30, 0.01, 0),
                ground(new Tilt(0.5, 1.2)),
                List.of(),
                Known.SURVEY,
                90);
    }

    private static DemoHole spine() {
        return new DemoHole(
                "7",
                4,
                line(-30, 690, 330, 770),
                new Shape(14.5, 13.5, 0.05, 90, 0.03, 45),
                ground(new Tilt(0.2, 1.2), new Rise(0.5, 4, 0.09, 4.2), new Rise(0, -4, 0.08, 4.2)),
                List.of(new Beside(BUNKER, -60, 2, 9), new Beside(BUNKER, 70, 2, 9)),
                Known.SURVEY,
                30);
    }

    private static DemoHole sideTilt() {
        return new DemoHole(
                "8",
                5,
                line(400, 740, 520, 520, 500, 270),
                new Shape(13, 12.5, 0.04, 135, 0.02, 80),
                ground(new Tilt(-1.9, 0.8), new Rise(5, 4, -0.05, 4)),
                List.of(new Beside(WATER, -90, 3, 16)),
                Known.SURVEY,
                90);
    }

    /** Holes 9 and 18 share one green; each comes to it along its own line. */
    private static DemoHole doubleGreen(String id, int par, double... teeAndBend) {
        return new DemoHole(
                id,
                par,
                line(teeAndBend[0], teeAndBend[1], teeAndBend[2], teeAndBend[3], 120, -60),
                new Shape(17, 22, 0.08, 90, 0.02, 0),
                ground(
                        new Tilt(0.2, 1.3),
                        new Rise(-11, 2, 0.1, 7),
                        new Rise(11, -3, 0.12, 7),
                        new Rise(0, 5, -0.05, 5)),
                List.of(new Beside(BUNKER, 0, 3, 10)),
                Known.SURVEY,
                150);
    }

    private static DemoHole outlineOnlyKidney() {
        return new DemoHole(
                "10",
                4,
                line(60, -90, -280, -130),
                new Shape(13, 11, 0.12, 60, 0.03, 0),
                ground(new Tilt(0.4, 1.5)),
                List.of(new Beside(BUNKER, -45, 2, 8)),
                Known.OUTLINE,
                80);
    }

    private static DemoHole tiltedAcross() {
        return new DemoHole(
                "11",
                4,
                line(-330, -100, -390, 270),
                new Shape(13.5, 12, 0.04, 10, 0.03, 90),
                ground(new Tilt(1.75, 0.8), new Rise(3, -5, 0.05, 5)),
                List.of(new Beside(BUNKER, 110, 2.5, 8)),
                Known.SURVEY,
                -60);
    }

    /**
     * Four low steps across it, on which no ball stops once the green is faster than 11.5 ft; from then on no ground is
     * left far enough from a step.
     */
    private static DemoHole runsOutWhenFast() {
        return new DemoHole(
                "12",
                3,
                line(-400, 330, -480, 470),
                new Shape(16, 14, 0.02, 50, 0.02, 0),
                ground(new Tilt(0.3, 1.0), step(-9.5), step(-3.15), step(3.15), step(9.5)),
                List.of(new Beside(BUNKER, 100, 3, 9)),
                Known.SURVEY,
                45);
    }

    private static Bank step(double y) {
        return new Bank(0, y, 0, 0.0925, 1.8);
    }

    private static DemoHole outlineOnlyRound() {
        return new DemoHole(
                "13",
                4,
                line(-540, 480, -600, 120),
                new Shape(11.5, 11.5, 0.04, 0, 0.04, 20),
                ground(new Tilt(-0.6, 1.4)),
                List.of(),
                Known.OUTLINE,
                -100);
    }

    private static DemoHole levelSpotsLong() {
        return new DemoHole(
                "14",
                5,
                line(-590, 60, -560, -220, -380, -400),
                new Shape(15.5, 10.5, 0.03, 45, 0.03, 60),
                ground(new Tilt(0.8, 1.5), new Rise(-3, 6, 0.05, 5)),
                List.of(new Beside(BUNKER, 85, 2, 9)),
                Known.LEVELS,
                90);
    }

    private static DemoHole veryLarge() {
        return new DemoHole(
                "15",
                4,
                line(-320, -420, 60, -400),
                new Shape(17.5, 15.5, 0.04, 90, 0.03, 30),
                ground(
                        new Tilt(-0.5, 0.9),
                        new Rise(-6, 6, 0.09, 6.5),
                        new Rise(7, -5, 0.1, 6.5),
                        new Bank(2, 8, 30, 0.14, 10)),
                List.of(new Beside(BUNKER, -100, 3, 9), new Beside(BUNKER, 40, 2, 8)),
                Known.SURVEY,
                0);
    }

    private static DemoHole levelSpotsBehindWater() {
        return new DemoHole(
                "16",
                3,
                line(110, -430, 240, -350),
                new Shape(11.5, 11.5, 0.05, 90, 0.02, 0),
                ground(new Tilt(0.3, 1.8)),
                List.of(new Beside(WATER, 180, 3.5, 18)),
                Known.LEVELS,
                60);
    }

    private static DemoHole saddle() {
        return new DemoHole(
                "17",
                4,
                line(300, -330, 620, -130),
                new Shape(14, 12.5, 0.05, 30, 0.04, 0),
                ground(
                        new Tilt(0.2, 0.7),
                        new Rise(-9, 0, 0.14, 6),
                        new Rise(9, 0, 0.14, 6),
                        new Rise(0, 10, -0.06, 6)),
                List.of(new Beside(BUNKER, -150, 2, 9)),
                Known.SURVEY,
                -30);
    }
}
