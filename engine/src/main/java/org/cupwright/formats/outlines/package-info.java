/**
 * Map files with golf tags read into a course: GeoJSON (RFC 7946) and OpenStreetMap XML into features, features into
 * holes with greens, lines of play and hazards; and shapes written back as GeoJSON.
 */
package org.cupwright.formats.outlines;
