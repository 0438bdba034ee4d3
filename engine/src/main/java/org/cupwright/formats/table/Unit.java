package org.cupwright.formats.table;

/**
 * A unit in which a column may be written, and how it becomes the program's own.
 *
 * @param name as it is written
 * @param factor value in the program's unit = (value − shift) · factor
 */
public record Unit(String name, double shift, double factor) {
    double toOwn(double value) {
        return (value - shift) * factor;
    }
}
