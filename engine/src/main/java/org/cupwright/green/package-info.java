/**
 * The ground of a green: what is known of its shape (nothing but the outline, level spots, or a surveyed surface) and
 * how well; where a place lies on the green as a person on the fairway sees it; and what lies on the ground on a given
 * day.
 */
package org.cupwright.green;
