/** What people type about an entry, by the names of its parts, turned into what the logbook holds. */
package org.cupwright.app.desk.entry.typed;
