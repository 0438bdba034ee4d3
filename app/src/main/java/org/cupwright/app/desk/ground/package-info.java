/** The outline of a green and the bunkers and water about it, drawn anew by people: looked at first, kept, taken back. */
package org.cupwright.app.desk.ground;
