/** Small programs on the engine that can be run and read. */
package org.cupwright.examples;
