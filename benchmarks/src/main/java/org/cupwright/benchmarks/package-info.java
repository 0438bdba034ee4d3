/** Programs that measure the engine's speed and check the results they measure. All ground and putts are invented. */
package org.cupwright.benchmarks;
