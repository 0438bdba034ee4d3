/**
 * Weeks of hole locations together: what every day's plan asks of its own day, and what the days ask of each other.
 *
 * <p>The days of a green are priced by {@link org.cupwright.rotation.weeks.GreenTable}, the greens of a day by {@link
 * org.cupwright.rotation.weeks.DayBalance}; a search changes one choice after another, and now and then a whole day
 * exactly.
 */
package org.cupwright.rotation.weeks;
