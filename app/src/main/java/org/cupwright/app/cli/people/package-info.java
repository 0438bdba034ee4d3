/** Who may sign in, from the command line. */
package org.cupwright.app.cli.people;
