package org.cupwright.testing.study;

import java.util.Random;
import org.cupwright.green.Jet;
import org.cupwright.green.Surface;

/** Small waves of about a metre on other ground; heights only, derivatives are not needed where it is surveyed. */
record MicroRelief(Surface under, double[] east, double[] north, double[] phase, double amplitudeMetres)
        implements Surface {
    private static final int WAVES = 6;

    /** Six waves of equal size whose sum has the variance of one wave of 3 to 10 mm from trough to crest. */
    static MicroRelief on(Surface under, long seed) {
        Random random = new Random(seed ^ 0x5DEECE66DL);
        double[] east = new double[WAVES];
        double[] north = new double[WAVES];
        double[] phase = new double[WAVES];
        for (int i = 0; i < WAVES; i++) {
            double perMetre = 2 * Math.PI / (0.8 + 0.4 * random.nextDouble());
            double turn = Math.PI * random.nextDouble();
            east[i] = perMetre * StrictMath.cos(turn);
            north[i] = perMetre * StrictMath.sin(turn);
            phase[i] = 2 * Math.PI * random.nextDouble();
        }
        double amplitude = (0.003 + 0.007 * random.nextDouble()) / 2;
        return new MicroRelief(under, east, north, phase, amplitude / Math.sqrt(WAVES));
    }

    @Override
    public void at(double x, double y, Jet out) {
        under.at(x, y, out);
        for (int i = 0; i < WAVES; i++) {
            out.z += amplitudeMetres * Math.sin(east[i] * x + north[i] * y + phase[i]);
        }
        out.zx = Double.NaN;
        out.zy = Double.NaN;
        out.zxx = Double.NaN;
        out.zxy = Double.NaN;
        out.zyy = Double.NaN;
    }
}
