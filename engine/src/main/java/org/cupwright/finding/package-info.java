/** Problems in what was handed in or measured: what kind, where, which value, and what to try. */
package org.cupwright.finding;
