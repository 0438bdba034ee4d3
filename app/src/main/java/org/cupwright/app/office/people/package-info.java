/** Who may come in, and what was done. */
package org.cupwright.app.office.people;
