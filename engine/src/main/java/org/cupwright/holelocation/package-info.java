/**
 * Whether a hole may be cut at a spot on a day, by eleven rules, each with value, limit, error and outcome; how hard
 * it would play.
 */
package org.cupwright.holelocation;
