/** The day: what to know first, eighteen rows in round order, and what has been cut of them. */
package org.cupwright.app.office.today;
