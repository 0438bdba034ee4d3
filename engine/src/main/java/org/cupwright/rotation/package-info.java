/**
 * Which position on which day, and why: one candidate for each green so that front, middle and back come out even, no
 * rule is broken, and the course's other wishes are met as well as they can be.
 */
package org.cupwright.rotation;
