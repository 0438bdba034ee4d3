/** What changed between two surveys of a green. */
package org.cupwright.green.resurvey;
