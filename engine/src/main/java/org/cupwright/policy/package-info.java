/**
 * What depends on the course: settings with their type, unit, default, range and source, and the values a course has
 * set, by the day from which they count.
 *
 * <p>Every other package declares the settings it reads, as constants of type {@link org.cupwright.policy.Setting} in
 * one class.
 */
package org.cupwright.policy;
