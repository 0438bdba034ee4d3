package org.cupwright.green;

/**
 * Height of a surface with its first and second derivatives at one point; written by {@link Surface#at}, reused by
 * callers that evaluate millions of points.
 *
 * <p>Heights in metres, first derivatives without unit (rise over run), second derivatives in 1/m; x is east, y north.
 */
public final class Jet {
    public double z;
    public double zx;
    public double zy;
    public double zxx;
    public double zxy;
    public double zyy;
}
