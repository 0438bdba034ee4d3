/** Commands for the turf and the weather. */
package org.cupwright.app.cli.turf;
