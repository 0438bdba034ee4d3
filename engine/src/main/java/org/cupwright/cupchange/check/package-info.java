/** Asks about facts that look wrong before they are believed. */
package org.cupwright.cupchange.check;
