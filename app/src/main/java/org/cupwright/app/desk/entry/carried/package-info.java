/**
 * What was written down on a telephone and comes later, by the page that carried it or as a file that somebody hands
 * in.
 */
package org.cupwright.app.desk.entry.carried;
