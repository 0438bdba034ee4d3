/** Who learnt what and may do what alone, from the command line. */
package org.cupwright.app.cli.training;
