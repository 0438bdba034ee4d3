/** The command that opens the pages. */
package org.cupwright.app.cli.serve;
