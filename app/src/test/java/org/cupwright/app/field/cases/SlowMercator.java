package org.cupwright.app.field.cases;

/**
 * Transverse Mercator of UTM by its definition, on the ellipsoid of WGS84 (a 6378137 m, 1/f 298.257223563): along the
 * middle meridian lengths are true but for the scale, and the map is conformal. So a point so far east of that meridian
 * is reached from it by an imaginary step of that longitude along the meridian's own differential equations. No series.
 */
final class SlowMercator {
    private static final double A = 6_378_137;
    private static final double F = 1 / 298.257223563;
    private static final double E2 = F * (2 - F);
    private static final double SCALE = 0.9996;
    private static final double FALSE_EAST = 500_000;
    private static final double FALSE_NORTH = 10_000_000;
    private static final int STEPS = 200;

    private SlowMercator() {}

    /** East and north in a zone, m. */
    static double[] utm(int epsg, double longitude, double latitude) {
        boolean south = epsg >= 32_700;
        double middle = 6 * (epsg % 100) - 183;
        Complex lat = new Complex(StrictMath.toRadians(latitude), 0);
        Complex along = new Complex(meridian(lat.re), 0);
        Complex step = new Complex(0, StrictMath.toRadians(longitude - middle) / STEPS);
        for (int i = 0; i < STEPS; i++) {
            Complex[] k1 = slopes(lat);
            Complex[] k2 = slopes(lat.plus(k1[0].times(step).times(0.5)));
            Complex[] k3 = slopes(lat.plus(k2[0].times(step).times(0.5)));
            Complex[] k4 = slopes(lat.plus(k3[0].times(step)));
            lat = lat.plus(mean(k1[0], k2[0], k3[0], k4[0]).times(step));
            along = along.plus(mean(k1[1], k2[1], k3[1], k4[1]).times(step));
        }
        return new double[] {FALSE_EAST + SCALE * along.im, SCALE * along.re + (south ? FALSE_NORTH : 0)};
    }

    /** By isometric latitude: what latitude and the length of the meridian change by. */
    private static Complex[] slopes(Complex lat) {
        Complex sine = lat.sine();
        Complex w = new Complex(1, 0).plus(sine.times(sine).times(-E2));
        Complex cosine = lat.cosine();
        return new Complex[] {
            w.times(cosine).times(1 / (1 - E2)), cosine.times(A).over(w.root()),
        };
    }

    private static Complex mean(Complex a, Complex b, Complex c, Complex d) {
        return a.plus(b.times(2)).plus(c.times(2)).plus(d).times(1 / 6.0);
    }

    /** From the equator to a latitude, m, by Simpson's rule. */
    private static double meridian(double latitude) {
        int pieces = 2000;
        double sum = 0;
        for (int i = 0; i <= pieces; i++) {
            double sine = StrictMath.sin(latitude * i / pieces);
            double radius = A * (1 - E2) / StrictMath.pow(1 - E2 * sine * sine, 1.5);
            sum += radius * (i == 0 || i == pieces ? 1 : i % 2 == 1 ? 4 : 2);
        }
        return sum * latitude / pieces / 3;
    }

    private record Complex(double re, double im) {
        Complex plus(Complex other) {
            return new Complex(re + other.re, im + other.im);
        }

        Complex times(double by) {
            return new Complex(by * re, by * im);
        }

        Complex times(Complex other) {
            return new Complex(re * other.re - im * other.im, re * other.im + im * other.re);
        }

        Complex over(Complex other) {
            double square = other.re * other.re + other.im * other.im;
            return times(new Complex(other.re, -other.im)).times(1 / square);
        }

        Complex sine() {
            return new Complex(StrictMath.sin(re) * StrictMath.cosh(im), StrictMath.cos(re) * StrictMath.sinh(im));
        }

        Complex cosine() {
            return new Complex(StrictMath.cos(re) * StrictMath.cosh(im), -StrictMath.sin(re) * StrictMath.sinh(im));
        }

        Complex root() {
            double size = StrictMath.sqrt(StrictMath.hypot(re, im));
            double half = StrictMath.atan2(im, re) / 2;
            return new Complex(size * StrictMath.cos(half), size * StrictMath.sin(half));
        }
    }
}
