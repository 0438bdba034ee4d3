/** Weather that others measured, taken into the logbook from a file. Nothing here calls the network. */
package org.cupwright.app.desk.weather;
