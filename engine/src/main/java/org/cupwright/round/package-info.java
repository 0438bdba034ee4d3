/** How the play of a day begins, and from that in which order and by when its holes are to be cut. */
package org.cupwright.round;
