/** The day a person asks about. */
package org.cupwright.app.desk.day;
