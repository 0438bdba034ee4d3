/**
 * An invented course with an invented season, for demonstrations, examples and tests: seeded, the same bytes on every
 * machine, with its own fixed today. No such club, ground or person exists.
 */
package org.cupwright.democourse;
