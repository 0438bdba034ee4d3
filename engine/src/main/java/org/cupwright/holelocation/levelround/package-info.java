/**
 * Where to lay the level on a surveyed green: the few spots whose readings would decide most of what the survey leaves
 * open.
 */
package org.cupwright.holelocation.levelround;
