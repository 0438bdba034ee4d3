/** Daily weather: observed, filled in, forecast, or what the season usually brings; which of them is always said. */
package org.cupwright.turf.weather;
