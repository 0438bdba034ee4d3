/**
 * The turf: weather, growth, the two clocks (rest from foot traffic, plugs knitting), wear and water; from what was
 * done it says what lies on each green on a coming day, and what the plugs ask for today.
 *
 * <p>This package holds the settings; {@code weather}, {@code growth} and {@code water} compute, {@code state} folds
 * facts, {@code today} makes the day's lists, {@code signal} speaks up about cutters and measures.
 */
package org.cupwright.turf;
