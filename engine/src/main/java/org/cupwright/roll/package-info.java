/** A ball rolling on a green: friction, motion over curved ground, coming to rest, capture by the hole. */
package org.cupwright.roll;
