/**
 * Whether a green has rested ground for all its holes over some days, by counting: how many holes fit on it that all
 * are far enough apart, and in which days more are wanted than that.
 */
package org.cupwright.rotation.shortage;
