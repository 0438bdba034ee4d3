/** Water: what the turf loses (FAO-56), what it gets, and what is not known of either. */
package org.cupwright.turf.water;
