/** The round of a day: how play begins, in which order and by when the holes are cut, and who cuts which. */
package org.cupwright.app.desk.round;
