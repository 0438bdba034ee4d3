/**
 * From a position on the map to the spot on the ground, and back: words, paces from the edges, a distance from a mark.
 *
 * <p>Everything is said in typed values; the words are the application's.
 */
package org.cupwright.settingout;
