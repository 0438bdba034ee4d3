/** Entries of one kind as a table for a spreadsheet, out and in. */
package org.cupwright.app.desk.entry.table;
