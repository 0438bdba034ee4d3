package org.cupwright.app.office.frame;

/**
 * A map on which corners are drawn, and how its drawing units become paces.
 *
 * @param picture what is there
 * @param ring what is being drawn, to lie over it
 * @param step half a pace, drawing units
 * @param startX where the cross stands at first
 * @param startY and down
 * @param zeroX where paces left and right begin
 * @param zeroY where paces on begin
 * @param pace drawing units of a pace
 */
public record Board(
        String picture,
        String ring,
        double step,
        double startX,
        double startY,
        double zeroX,
        double zeroY,
        double pace) {}
