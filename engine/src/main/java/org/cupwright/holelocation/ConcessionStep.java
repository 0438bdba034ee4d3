package org.cupwright.holelocation;

/**
 * One concession made on a green because nothing passed, and what it bought.
 *
 * @param concession what was conceded
 * @param cellsGained spots of the lattice that no longer fail with this concession on top of those before it; a step
 *     may buy nothing by itself and be needed all the same
 * @param areaGained their area, m²
 */
public record ConcessionStep(Concession concession, int cellsGained, double areaGained) {}
