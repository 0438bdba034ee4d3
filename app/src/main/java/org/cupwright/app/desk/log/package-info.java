/** The logbook as the desk keeps it: facts as JSON, where they are kept, how they are recorded. */
package org.cupwright.app.desk.log;
