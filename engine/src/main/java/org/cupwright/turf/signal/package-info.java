/** What speaks up by itself: cutters that run one way, blades, stops, and measures that leave their usual range. */
package org.cupwright.turf.signal;
