package org.cupwright.green;

/**
 * Where a point of a green lies as the crew and players say it.
 *
 * @param onMetres distance on, along the line of play, by the course's convention; negative only before a front mark
 *     that stands inside the green
 * @param fromBackMetres distance from the back, along the same line
 * @param side the nearer side edge, as seen from the fairway
 * @param sideMetres distance from that edge, at right angles to the line of play
 * @param third front, middle or back
 * @param lateral left, centre or right
 */
public record PlaceOnGreen(
        double onMetres, double fromBackMetres, Side side, double sideMetres, Third third, Lateral lateral) {}
