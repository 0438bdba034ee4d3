package org.cupwright.app.session;

import org.cupwright.app.texts.Door;
import org.cupwright.units.UnitSystem;

/**
 * How an answer is to be worded.
 *
 * @param door through which it is given
 * @param language as in {@code en}
 * @param units in which lengths are shown
 * @param paceMetres the length of the pace in which places on a green are told
 */
public record Speech(Door door, String language, UnitSystem units, double paceMetres) {}
