package org.cupwright.formats.outlines;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.cupwright.course.Hole;
import org.cupwright.formats.InventedMap;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;

class GeoJsonTextTest {
    @Test
    void writesWhatTheReaderReadsBackToTheMillimetre() {
        ReadCourse first =
                new InventedMap().green(40, 300, 14, ",\"ref\":\"7\"").read();
        Hole hole = first.course().find("7").orElseThrow();
        String text = new GeoJsonText(first.course().frame().epsg())
                .add(hole.green().polygon(), Map.of("golf", "green", "ref", "7"))
                .text();
        Hole again = InventedMap.readCourse(text, InventedMap.request())
                .course()
                .find("7")
                .orElseThrow();
        double apart = DiscreteHausdorffDistance.distance(
                hole.green().polygon(), again.green().polygon());
        assertThat(apart).isLessThan(0.001);
        assertThat(text).doesNotContain("crs").startsWith("{\"type\":\"FeatureCollection\"");
    }
}
