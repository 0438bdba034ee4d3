/** How much the points of a survey share of their errors, from ground that it covers in more than one strip. */
package org.cupwright.green.strips;
