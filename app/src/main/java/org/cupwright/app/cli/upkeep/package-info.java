/** Commands for the data folder and the settings. */
package org.cupwright.app.cli.upkeep;
