package org.cupwright.formats.points;

import java.util.Arrays;
import org.cupwright.course.MapPoint;

/** Surveyed points in the course's frame, kept compactly. Immutable. */
public final class PointCloud {
    /** The class of points whose file has no classes. */
    public static final int NO_CLASS = -1;

    private final double[] east;
    private final double[] north;
    private final double[] height;
    private final short[] pointClass;

    private PointCloud(double[] east, double[] north, double[] height, short[] pointClass) {
        this.east = east;
        this.north = north;
        this.height = height;
        this.pointClass = pointClass;
    }

    public int size() {
        return east.length;
    }

    public double east(int index) {
        return east[index];
    }

    public double north(int index) {
        return north[index];
    }

    /** Height of a point, metres, above whatever the survey measures from. */
    public double heightMetres(int index) {
        return height[index];
    }

    /** The class the file gives a point (2 is ground in LAS files), or {@link #NO_CLASS}. */
    public int pointClass(int index) {
        return pointClass[index];
    }

    public MapPoint point(int index) {
        return new MapPoint(east[index], north[index]);
    }

    /** All eastings, metres; a copy, as are the other two. */
    public double[] easts() {
        return east.clone();
    }

    public double[] norths() {
        return north.clone();
    }

    public double[] heightsMetres() {
        return height.clone();
    }

    /** The chosen points, in the order of the choice. */
    public PointCloud chosen(int[] indices) {
        Builder chosen = new Builder();
        for (int i : indices) {
            chosen.add(east[i], north[i], height[i], pointClass[i]);
        }
        return chosen.build();
    }

    /** Collects points. */
    public static final class Builder {
        private double[] east = new double[256];
        private double[] north = new double[256];
        private double[] height = new double[256];
        private short[] pointClass = new short[256];
        private int size;

        public Builder add(double eastMetres, double northMetres, double heightMetres, int classOfPoint) {
            if (size == east.length) {
                grow();
            }
            east[size] = eastMetres;
            north[size] = northMetres;
            height[size] = heightMetres;
            pointClass[size] = (short) classOfPoint;
            size++;
            return this;
        }

        private void grow() {
            int larger = size + (size >> 1);
            east = Arrays.copyOf(east, larger);
            north = Arrays.copyOf(north, larger);
            height = Arrays.copyOf(height, larger);
            pointClass = Arrays.copyOf(pointClass, larger);
        }

        public int size() {
            return size;
        }

        public PointCloud build() {
            return new PointCloud(
                    Arrays.copyOf(east, size),
                    Arrays.copyOf(north, size),
                    Arrays.copyOf(height, size),
                    Arrays.copyOf(pointClass, size));
        }
    }
}
