/** A ball rolling on a green: friction, motion over curved ground, coming to rest. */
package org.cupwright.roll;
