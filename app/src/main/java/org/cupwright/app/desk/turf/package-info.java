/** The turf on a day, as logbook and plans leave it. */
package org.cupwright.app.desk.turf;
