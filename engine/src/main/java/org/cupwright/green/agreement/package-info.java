/**
 * Whether level readings and a survey of the same green agree: what neighbouring points share, no survey shows by
 * itself.
 */
package org.cupwright.green.agreement;
