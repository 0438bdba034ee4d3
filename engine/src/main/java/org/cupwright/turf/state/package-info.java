/**
 * Facts folded into the state of the turf: plain immutable values, the same whatever the order in which facts arrived.
 */
package org.cupwright.turf.state;
