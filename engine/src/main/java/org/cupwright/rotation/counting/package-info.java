/**
 * Choosing one option for each of many greens so that counts come out even and the sum of costs is least: the
 * arithmetic of the rotation, which knows nothing of golf but that there are three parts to a split.
 */
package org.cupwright.rotation.counting;
