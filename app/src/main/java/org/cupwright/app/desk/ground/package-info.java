/** The outline of a green, bunkers and water about it, drawn by people: looked at first, kept, taken back. */
package org.cupwright.app.desk.ground;
