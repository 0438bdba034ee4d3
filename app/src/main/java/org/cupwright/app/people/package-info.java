/** Who may sign in and as what: codes, passwords, roles, and the audit trail of who changed what. */
package org.cupwright.app.people;
