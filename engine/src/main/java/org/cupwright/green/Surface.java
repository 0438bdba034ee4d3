package org.cupwright.green;

/**
 * A smooth height field over the map: continuous height and slope everywhere, second derivatives almost everywhere.
 *
 * <p>Defined for every point, also where nothing was measured; whether a value can be relied on is the business of
 * {@link Ground}. Implementations are immutable and safe for use by several threads.
 */
public interface Surface {
    /**
     * Evaluates the surface.
     *
     * @param east metres, course frame
     * @param north metres, course frame
     * @param out receives height and derivatives
     */
    void at(double east, double north, Jet out);
}
