/** The day's hole locations for whoever has their address. */
package org.cupwright.app.office.sheet;
