package org.cupwright.app.desk.plan;

import org.cupwright.app.desk.Spot;

/** What a person wants of one hole on the day that is planned. */
public sealed interface HoleWish {
    String hole();

    /** The hole is to be at a spot, whatever the plan would choose. */
    record Here(String hole, Spot spot) implements HoleWish {}

    /** The hole is not to be within so many metres of a spot. */
    record NotHere(String hole, Spot spot, double radiusMetres) implements HoleWish {}

    /** Whatever was asked for the hole that day no longer counts. */
    record Free(String hole) implements HoleWish {}
}
