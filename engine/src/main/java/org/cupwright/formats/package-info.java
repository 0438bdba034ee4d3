/**
 * Survey files read into courses, points and readings: what every reader shares. Coordinate frames, findings about the
 * data, and the failure of a file that cannot be read at all.
 *
 * <p>Readers take streams and bound what they read; they open no file and no network. Their trouble is told as {@link
 * org.cupwright.finding.Finding}: kind, place, value, what to try.
 */
package org.cupwright.formats;
