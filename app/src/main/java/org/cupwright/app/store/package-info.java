/**
 * The stores that app.desk asks for, in SQL that every database takes; what each says in its own way they take from
 * {@link org.cupwright.app.store.Dialect}. A package for each database has the rest. SQL stands nowhere else.
 */
package org.cupwright.app.store;
