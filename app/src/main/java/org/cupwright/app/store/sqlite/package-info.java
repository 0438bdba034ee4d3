/**
 * One SQLite file in the data folder: opening it, its schema, its transactions, the lock that guards it, backup,
 * restore and check. What only SQLite says stands nowhere else.
 */
package org.cupwright.app.store.sqlite;
