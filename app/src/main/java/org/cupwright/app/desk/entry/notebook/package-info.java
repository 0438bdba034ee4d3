/** A club's old notebook of hole locations, taken into the logbook. */
package org.cupwright.app.desk.entry.notebook;
