/** The logbook as it is kept: which entries there are, which count, and what they say of a day. */
package org.cupwright.app.desk.log;
