/** The surveys of a green that are kept beside each other, and what changed between two of them. */
package org.cupwright.app.desk.resurvey;
