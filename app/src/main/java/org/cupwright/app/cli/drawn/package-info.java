/** Commands for good and bad ground as people draw it. */
package org.cupwright.app.cli.drawn;
