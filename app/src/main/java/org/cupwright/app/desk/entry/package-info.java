/** What a person writes down: the kinds of entries and their parts, what is asked about, how one is corrected. */
package org.cupwright.app.desk.entry;
