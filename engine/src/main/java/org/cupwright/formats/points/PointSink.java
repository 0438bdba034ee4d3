package org.cupwright.formats.points;

/** Takes the points of a file one by one, as they stand in it. */
public interface PointSink {
    /**
     * Takes one point.
     *
     * @param x east first, in the file's frame and unit
     * @param y in the file's frame and unit
     * @param z height in the file's unit
     * @param pointClass the file's class, or {@link PointCloud#NO_CLASS}
     */
    void accept(double x, double y, double z, int pointClass);
}
