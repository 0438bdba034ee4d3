/** How fast the grass grows, and the two clocks that growth stretches. */
package org.cupwright.turf.growth;
