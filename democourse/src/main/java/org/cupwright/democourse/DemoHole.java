package org.cupwright.democourse;

import java.util.List;
import org.cupwright.course.Hazard;
import org.cupwright.course.MapPoint;

/**
 * The invented plan of one hole, from which its outline, ground and surroundings are made.
 *
 * <p>Lengths in metres. Points of the line of play are relative to the course's corner; everything about the green is
 * in the green's own frame: x to the right and y along the line of play, from the green's middle.
 *
 * @param id the hole's number
 * @param par its par
 * @param line from tee to green; the last point is the green's middle
 * @param shape the green's edge
 * @param ground its ground, as features added together
 * @param hazards what lies beside it
 * @param known what the club knows of its ground
 * @param walkOff the direction in which players leave, degrees clockwise from the line of play
 */
record DemoHole(
        String id,
        int par,
        List<MapPoint> line,
        Shape shape,
        List<Feature> ground,
        List<Beside> hazards,
        Known known,
        double walkOff) {

    /**
     * An ellipse made less regular by two waves of its radius.
     *
     * @param halfDepth half the depth along the line of play
     * @param halfWidth half the width across it
     * @param waveTwo amplitude of a wave with two crests, as a part of the radius (kidneys)
     * @param turnTwo where its first crest lies, degrees clockwise from the line of play
     * @param waveThree amplitude of a wave with three crests
     * @param turnThree where its first crest lies
     */
    record Shape(
            double halfDepth, double halfWidth, double waveTwo, double turnTwo, double waveThree, double turnThree) {}

    /** A piece of the ground's form. */
    sealed interface Feature {}

    /** A tilt: percent of rise towards the right, and towards the back. */
    record Tilt(double rightPercent, double backPercent) implements Feature {}

    /** A bell-shaped rise (or hollow, when negative). */
    record Rise(double x, double y, double height, double width) implements Feature {}

    /**
     * A bank: a step through (x, y), rising in a direction.
     *
     * @param turn the direction in which it rises, degrees clockwise from the line of play
     * @param height how much it rises
     * @param width over how much
     */
    record Bank(double x, double y, double turn, double height, double width) implements Feature {}

    /**
     * A hazard outside the edge.
     *
     * @param kind bunker, water or fall-off
     * @param turn where it lies as seen from the green's middle, degrees clockwise from the line of play
     * @param gap how far outside the edge it begins
     * @param length its size along the edge
     */
    record Beside(Hazard.Kind kind, double turn, double gap, double length) {}

    /** What the club knows of the ground. */
    enum Known {
        SURVEY,
        LEVELS,
        OUTLINE
    }
}
