/** Commands of the logbook, of its tables and of the old notebook, and the one about a cutter's stop. */
package org.cupwright.app.cli.log;
