package org.cupwright.app.desk.begin;

import org.cupwright.app.storage.SettingUp.Known;
import org.cupwright.app.storage.SettingUp.PictureOnGround;
import org.cupwright.course.MapPoint;
import org.cupwright.units.Heading;

/**
 * From a picture taken from straight above to the ground, by two points that are known on both: turned, enlarged and
 * moved, never skewed.
 *
 * <p>With pixels as right + i·up and the ground as east + i·north, a point z lies at w₁ + a·(z − z₁) with a = (w₂ −
 * w₁)/(z₂ − z₁). Two points leave nothing over by which a wrong one would show; the sizes of greens do.
 */
public final class PictureFrame {
    private final Known first;
    private final double real;
    private final double imaginary;

    /** @throws IllegalArgumentException if the points are one point of the picture */
    PictureFrame(PictureOnGround picture) {
        first = picture.first();
        Known second = picture.second();
        double right = second.right() - first.right();
        double up = first.down() - second.down();
        double square = right * right + up * up;
        if (square == 0) {
            throw new IllegalArgumentException("two known points at one place of the picture");
        }
        double east = second.at().east() - first.at().east();
        double north = second.at().north() - first.at().north();
        real = (east * right + north * up) / square;
        imaginary = (north * right - east * up) / square;
    }

    public static PictureFrame of(PictureOnGround picture) {
        return new PictureFrame(picture);
    }

    /** The place on the ground of a pixel, counted from the picture's upper left corner. */
    public MapPoint ground(double right, double down) {
        double x = right - first.right();
        double y = first.down() - down;
        return new MapPoint(
                first.at().east() + real * x - imaginary * y, first.at().north() + imaginary * x + real * y);
    }

    /** A place of the picture in pixels from its upper left corner. */
    public record Pixel(double right, double down) {}

    /** The pixel where a place of the ground is seen. */
    public Pixel pixel(MapPoint ground) {
        double east = ground.east() - first.at().east();
        double north = ground.north() - first.at().north();
        double square = real * real + imaginary * imaginary;
        double x = (east * real + north * imaginary) / square;
        double y = (north * real - east * imaginary) / square;
        return new Pixel(first.right() + x, first.down() - y);
    }

    /** How much ground a pixel is wide. */
    public double metresPerPixel() {
        return Math.sqrt(real * real + imaginary * imaginary);
    }

    /** The direction on the ground of what is up in the picture. */
    public Heading up() {
        return Heading.ofStep(-imaginary, real);
    }
}
