/**
 * One reader for every table that people and programs hand in: columns are declared once ({@link
 * org.cupwright.formats.table.Column}), found in a file's first line, and its lines read by them or told with the
 * reason why not.
 */
package org.cupwright.formats.table;
