/** Keeping a data folder safe: backup, restore, check. */
package org.cupwright.app.storage.upkeep;
