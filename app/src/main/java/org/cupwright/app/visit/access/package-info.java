/** Who may ask for what: one table of every address there is. */
package org.cupwright.app.visit.access;
