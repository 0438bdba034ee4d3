/**
 * From a position on the map to the spot on the ground, and back: words, paces from the edges, a distance from a mark,
 * two tapes from two marks.
 *
 * <p>Everything is said in typed values; the words are the application's.
 */
package org.cupwright.settingout;
