/**
 * The one place that sees the solver library, OR-Tools' CP-SAT (Google, Apache-2.0). Its native part is fetched for the
 * machine that builds; where it is missing the program works without.
 */
package org.cupwright.rotation.solver;
