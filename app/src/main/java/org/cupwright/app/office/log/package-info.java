/** The logbook: odd things first, what was done on a day, and writing it down. */
package org.cupwright.app.office.log;
