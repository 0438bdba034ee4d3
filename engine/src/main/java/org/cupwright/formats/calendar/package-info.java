/** Calendars as other programs read them: iCalendar (RFC 5545), written only. */
package org.cupwright.formats.calendar;
