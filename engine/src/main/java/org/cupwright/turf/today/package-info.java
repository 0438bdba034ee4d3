/** What the turf asks of a day: where nothing may be cut, which plugs want water, which want a look. */
package org.cupwright.turf.today;
