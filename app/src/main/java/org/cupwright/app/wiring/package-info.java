/** Puts the parts together. Nobody uses this package. */
package org.cupwright.app.wiring;
