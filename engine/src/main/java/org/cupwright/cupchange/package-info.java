/**
 * What was done: the logbook's facts, and how corrections and repeated arrivals are resolved.
 *
 * <p>Facts are only ever added. {@link org.cupwright.cupchange.Logbook} says which of them count; nothing here knows
 * what follows from them for the turf.
 */
package org.cupwright.cupchange;
