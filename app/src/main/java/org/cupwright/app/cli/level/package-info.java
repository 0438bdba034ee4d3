/** Commands for readings with the level, and for the round that takes them. */
package org.cupwright.app.cli.level;
