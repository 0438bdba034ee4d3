/** Ground that was surveyed: which part of it is known, and its surface with the errors of slope and bend. */
package org.cupwright.green.surveyed;
