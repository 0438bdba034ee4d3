package org.cupwright.formats.points;

import java.util.stream.DoubleStream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.SurveyPoints;

/** The points of a green so far. */
record CollectedPoints(
        DoubleStream.Builder east, DoubleStream.Builder north, DoubleStream.Builder height, StripColumns strips) {
    CollectedPoints() {
        this(DoubleStream.builder(), DoubleStream.builder(), DoubleStream.builder(), new StripColumns());
    }

    void add(MapPoint point, double heightMetres, double strip, double time) {
        east.add(point.east());
        north.add(point.north());
        height.add(heightMetres);
        strips.add(strip, time);
    }

    /** @param inStrips whether a file has a column for the strips of its points */
    SurveyPoints points(boolean inStrips) {
        SurveyPoints points = SurveyPoints.scattered(
                east.build().toArray(), north.build().toArray(), height.build().toArray());
        return inStrips ? strips.told(points) : points;
    }
}
