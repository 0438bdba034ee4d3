/** The level: where to lay it next, and what it read. */
package org.cupwright.app.desk.level;
