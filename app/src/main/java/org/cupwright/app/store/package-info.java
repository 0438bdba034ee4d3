/**
 * One SQLite file in the data folder: its schema, its transactions and the stores that app.desk asks for. SQL stands
 * nowhere else.
 */
package org.cupwright.app.store;
