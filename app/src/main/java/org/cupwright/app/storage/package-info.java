/**
 * What is kept of the courses and how it is asked for: the interfaces that the use cases need, and the values that they
 * keep.
 */
package org.cupwright.app.storage;
