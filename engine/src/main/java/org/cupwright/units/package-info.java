/**
 * Quantities and their conversions: lengths, paces, headings, green speed.
 *
 * <p>The engine computes in SI units; the unit stands in the name of every raw number. Nothing here depends on another
 * package.
 */
package org.cupwright.units;
