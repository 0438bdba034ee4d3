/** Surveyed points read from files, taken to the course's frame, checked against its greens and given to them. */
package org.cupwright.formats.points;
