package org.cupwright.app.maps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.xpath.XPath;
import javax.xml.xpath.XPathFactory;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class GreenMapTest {
    private static final int SIZE = 300;

    private final DemoCourse demo = new DemoCourse(1);
    private final Hole hole = demo.course().find("2").orElseThrow();
    private final Texts texts = Texts.find("en", UnitSystem.METRIC, 0.914).orElseThrow();
    private final MapPoint middle = hole.green().centroid();

    @Test
    void placesAreWhereTheyAreOnTheGround() {
        MapFrame frame = new MapFrame(hole, SIZE, SIZE);
        MapPoint back = frame.ground(frame.x(middle), frame.y(middle));

        assertThat(back.distanceMetres(middle)).isLessThan(1e-6);
        assertThat(frame.y(middle.moved(hole.lineOfPlay().orElseThrow().atGreen(), 5)))
                .as("play runs up")
                .isCloseTo(frame.y(middle) - frame.length(5), within(1e-6));
    }

    @Test
    void drawsTheSpotWhereItIs() throws Exception {
        MapFrame frame = new MapFrame(hole, SIZE, SIZE);
        Document svg = parsed(GreenDrawing.of(hole).withSpots(List.of(middle)));

        assertThat(number(svg, "//*[@class='spot']/*/@cx")).isCloseTo(frame.x(middle), within(0.001));
        assertThat(number(svg, "//*[@class='spot']/*/@cy")).isCloseTo(frame.y(middle), within(0.001));
    }

    @Test
    void drawsContourLinesOfASurveyedGreenOnly() throws Exception {
        Document without = parsed(GreenDrawing.of(hole));
        Document with = parsed(GreenDrawing.of(hole).withSurface(demo.trueSurface("2")));

        assertThat(number(without, "count(//*[@class='contour']/*)")).isZero();
        assertThat(number(with, "count(//*[@class='contour']/*)")).isGreaterThan(5);
    }

    @Test
    void hatchesAndDotsOnlyTheGroundThatIsSo() throws Exception {
        Document clear = parsed(GreenDrawing.of(hole));
        Document half = parsed(
                GreenDrawing.of(hole).withGround(at -> at.east() < middle.east(), at -> at.north() < middle.north()));

        assertThat(text(clear, "//*[@class='not-to-cut']/*/@d")).isEmpty();
        assertThat(text(half, "//*[@class='not-to-cut']/*/@d")).startsWith("M");
        assertThat(number(half, "count(//*[@class='resting']/*)")).isGreaterThan(20);
    }

    private Document parsed(GreenDrawing drawing) throws Exception {
        String svg = new GreenMap(texts).draw(drawing, SIZE, SIZE);
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    private static double number(Document svg, String path) throws Exception {
        return Double.parseDouble(text(svg, path));
    }

    private static String text(Document svg, String path) throws Exception {
        XPath xpath = XPathFactory.newInstance().newXPath();
        return xpath.evaluate(path, svg);
    }
}
