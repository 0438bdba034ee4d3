package org.cupwright.app.maps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.xpath.XPath;
import javax.xml.xpath.XPathConstants;
import javax.xml.xpath.XPathFactory;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.GroundItem;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.PersonsOpinion.Kind;
import org.cupwright.green.field.GreenField;
import org.cupwright.green.findings.GroundFinding;
import org.cupwright.message.Message;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.MultiPolygon;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class GreenMapTest {
    private static final int SIZE = 300;

    private final DemoCourse demo = new DemoCourse(1);
    private final Hole hole = demo.course().find("2").orElseThrow();
    private final Texts texts =
            Texts.find("en", Door.COMMANDS, UnitSystem.METRIC, 0.914).orElseThrow();
    private final MapPoint middle = hole.green().centroid();

    private GreenDrawing full() {
        List<OldHoleOnMap> old = new ArrayList<>();
        List<SlopeOnMap> slopes = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            old.add(new OldHoleOnMap(new MapPoint(middle.east() + 0.7 * i - 4, middle.north() + i % 3), i + 1));
            slopes.add(new SlopeOnMap(new MapPoint(middle.east() - 4 + i, middle.north() + 2 - i % 4), 1.5 + i));
        }
        GreenDrawing used = MadeDrawing.used(
                MadeDrawing.surveyed(hole, demo.trueSurface("2")),
                at -> at.east() < middle.east(),
                at -> at.north() < middle.north(),
                old.toArray(OldHoleOnMap[]::new));
        return MadeDrawing.withSlopes(used, slopes)
                .withTitle("Green 2, invented & <made>")
                .withSpots(List.of(middle));
    }

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
        Document svg = parsed(card(MadeDrawing.of(hole).withSpots(List.of(middle))));

        assertThat(number(svg, "//*[@class='spot']/*/@cx")).isCloseTo(frame.x(middle), within(0.001));
        assertThat(number(svg, "//*[@class='spot']/*/@cy")).isCloseTo(frame.y(middle), within(0.001));
    }

    @Test
    void drawsContourLinesOfASurveyedGreenOnly() throws Exception {
        Document without = parsed(card(MadeDrawing.of(hole)));
        Document with = parsed(card(MadeDrawing.surveyed(hole, demo.trueSurface("2"))));

        assertThat(number(without, "count(//*[starts-with(@class,'contour')]/*)"))
                .isZero();
        assertThat(number(with, "count(//*[@class='contour']/*)")).isGreaterThan(5);
        assertThat(number(with, "count(//*[@class='contour fifth']/*)")).isGreaterThan(1);
    }

    @Test
    void hatchesAndDotsOnlyTheGroundThatIsSo() throws Exception {
        Document clear = parsed(card(MadeDrawing.of(hole)));
        Document half = parsed(card(MadeDrawing.used(
                MadeDrawing.of(hole), at -> at.east() < middle.east(), at -> at.north() < middle.north())));

        assertThat(text(clear, "//*[@class='not-to-cut']/*/@d")).isEmpty();
        assertThat(text(half, "//*[@class='not-to-cut']/*/@d")).startsWith("M");
        assertThat(number(half, "count(//*[@class='resting']/*)")).isGreaterThan(20);
        MapFrame frame = new MapFrame(hole, SIZE, SIZE);
        String[] corners =
                text(half, "//*[@class='not-to-cut']/*/@d").substring(1).split("[ML]", -1);
        assertThat(corners).hasSizeGreaterThan(20).allSatisfy(corner -> {
            String[] xy = corner.split(" ", -1);
            MapPoint at = frame.ground(Double.parseDouble(xy[0]), Double.parseDouble(xy[1]));
            assertThat(at.east()).isLessThan(middle.east());
            assertThat(hole.green().contains(at)).isTrue();
        });
    }

    @Test
    void everyHatchingLineHasTwoEnds() throws Exception {
        String path = text(parsed(card(full())), "//*[@class='not-to-cut']/*/@d");
        assertThat(path).matches("(M[-0-9. ]+L[-0-9. ]+)+");
    }

    @Test
    void labelsOfThePictureKeepClearOfEachOther() throws Exception {
        Document svg = parsed(new GreenMap(texts).picture(full()));
        NodeList boxes = (NodeList) path().evaluate("//*[@class='clear']/*", svg, XPathConstants.NODESET);
        assertThat(boxes.getLength()).isGreaterThan(15);
        List<Envelope> taken = new ArrayList<>();
        for (int i = 0; i < boxes.getLength(); i++) {
            Envelope box = box((Element) boxes.item(i));
            assertThat(taken).noneMatch(box::intersects);
            taken.add(box);
        }
    }

    private static Envelope box(Element rect) {
        double x = Double.parseDouble(rect.getAttribute("x"));
        double y = Double.parseDouble(rect.getAttribute("y"));
        return new Envelope(
                x,
                x + Double.parseDouble(rect.getAttribute("width")),
                y,
                y + Double.parseDouble(rect.getAttribute("height")));
    }

    @Test
    void thePictureSaysWhatItsSignsMean() throws Exception {
        Document svg = parsed(new GreenMap(texts).picture(full()));
        String key = text(svg, "string(//*[@class='key'])");
        assertThat(key)
                .contains("hatched")
                .contains("dotted")
                .contains("slope in %")
                .contains("5 cm");
        assertThat(text(svg, "string(//*[@class='title'])")).isEqualTo("Green 2, invented & <made>");
        assertThat(key).doesNotContain("map.key");
    }

    /** What is said of a day is not drawn, and the key does not speak of it. */
    @Test
    void theGroundAloneHasItsContoursAndSlopes() throws Exception {
        Document svg = parsed(new GreenMap(texts).picture(full().groundAlone()));
        assertThat(text(svg, "string(//*[@class='key'])"))
                .contains("slope in %", "5 cm")
                .doesNotContain("hatched", "clear:", "dotted:", "ring");
        assertThat(text(svg, "count(//*[@class='contour'])")).isNotEqualTo("0");
        for (String day : List.of("not-to-cut", "resting", "old-hole", "spot")) {
            assertThat(text(svg, "count(//*[@class='" + day + "']/*[not(self::path[@d=''])])"))
                    .as(day)
                    .isEqualTo("0");
        }
    }

    @Test
    void findingsAreNumberedWhereTheyAreAndSaidBelow() throws Exception {
        Message where = Where.hole("2");
        MultiPolygon part = new GreenField(hole.green(), at -> at.east() - middle.east())
                .allAbove(1)
                .shape();
        GroundFinding here = new GroundFinding(
                Finding.of(FindingKind.NO_SURVEY, where, new Message.Count(0)).at(middle), Optional.of(part));
        GroundFinding everywhere = new GroundFinding(
                Finding.of(FindingKind.SLOPES_UNCERTAIN, where, new Message.SlopePoints(1.25)), Optional.empty());
        Document svg = parsed(new GreenMap(texts).picture(full().withFindings(List.of(here, everywhere))));
        MapFrame frame = new MapFrame(hole, 1000, 1000);

        assertThat(text(svg, "string(//*[@class='finding'])")).isEqualTo("1");
        assertThat(text(svg, "//*[@class='finding-area']/*/@d")).startsWith("M");
        assertThat(number(svg, "//*[@class='finding-place']/*/@cx"))
                .as("between the edges of the picture")
                .isBetween(0.0, frame.width() + 0.0);
        assertThat(text(svg, "string(//*[@class='key'])"))
                .contains("framed number", "1  Nobody has measured", "2  Slopes are known to about ± 1.3");
        assertThat(text(parsed(new GreenMap(texts).picture(full())), "string(//*[@class='key'])"))
                .doesNotContain("framed number");
    }

    @Test
    void thePngIsTheSameDrawingAndAlwaysTheSameBytes() throws Exception {
        String svg = new GreenMap(texts).picture(full());
        assertThat(new GreenMap(texts).picture(full())).isEqualTo(svg);
        byte[] png = Png.of(svg, 500);
        assertThat(Png.of(svg, 500)).isEqualTo(png);

        BufferedImage picture = ImageIO.read(new ByteArrayInputStream(png));
        Document document = parsed(svg);
        double scale = 500.0 / GreenMap.PICTURE_WIDTH;
        int x = (int) (scale * number(document, "//*[@class='spot']/*/@cx"));
        int y = (int) (scale * number(document, "//*[@class='spot']/*/@cy"));
        assertThat(picture.getWidth()).isEqualTo(500);
        assertThat(picture.getRGB(x, y)).as("the spot's colour").isEqualTo(0xffa4431d);
        assertThat(picture.getRGB(0, 0)).as("white about it").isEqualTo(0xffffffff);
    }

    @Test
    void outlinedLettersStandWhereTheTextStood() throws Exception {
        String svg = new GreenMap(texts).picture(full());
        Document outlined = parsed(OutlinedText.of(svg));
        assertThat(number(outlined, "count(//*[local-name()='text'])")).isZero();
        assertThat(number(outlined, "count(//*[@class='letters'])"))
                .isEqualTo(number(parsed(svg), "count(//*[local-name()='text'])"));
    }

    @Test
    void groundThatPeopleDrewHasMarksOfItsOwn() throws Exception {
        MapPoint left = new MapPoint(middle.east() - 5, middle.north());
        List<DrawnItem> drawn = List.of(
                new DrawnItem("2-good-1", word(Kind.GOOD), DrawnItem.disc(left, 4)),
                new DrawnItem(
                        "2-bad-1",
                        word(Kind.BAD),
                        DrawnItem.disc(new MapPoint(middle.east() + 4, middle.north()), 0.3)),
                new DrawnItem("2-usual-1", word(Kind.USUAL), DrawnItem.spot(middle)),
                new DrawnItem("2-bad-2", word(Kind.BAD), DrawnItem.disc(new MapPoint(middle.east() + 400, 0), 2)));
        Document svg = parsed(new GreenMap(texts).picture(MadeDrawing.withDrawn(MadeDrawing.of(hole), drawn)));
        assertThat(number(svg, "count(//*[@class='drawn-good'])")).isEqualTo(1);
        assertThat(number(svg, "count(//*[@class='drawn-bad'])"))
                .as("one lies off the green")
                .isEqualTo(1);
        assertThat(number(svg, "count(//*[@class='tick'])")).isBetween(4.0, 40.0);
        assertThat(number(svg, "count(//*[@class='cross'])"))
                .as("little ground has one")
                .isEqualTo(1);
        assertThat(number(svg, "count(//*[@class='usual'])")).isEqualTo(1);
        assertThat(text(svg, "//*[@class='key']")).contains("said to be good", "said to be bad", "usual spot");
    }

    @Test
    void closedAndSavedGroundIsDrawnApartFromTheRestWithItsWord() throws Exception {
        MapPoint left = new MapPoint(middle.east() - 5, middle.north());
        List<GroundItem> marked = List.of(
                ground(GroundItem.Kind.OUT_OF_USE, left, 2),
                ground(GroundItem.Kind.SAVED, new MapPoint(middle.east() + 5, middle.north()), 2),
                ground(GroundItem.Kind.OUT_OF_USE, new MapPoint(middle.east() + 400, middle.north()), 2));
        GreenDrawing drawing = MadeDrawing.withMarked(full(), marked);
        Document svg = parsed(new GreenMap(texts).picture(drawing));

        assertThat(number(svg, "count(//*[@class='closed'])"))
                .as("one lies off the green")
                .isEqualTo(1);
        assertThat(number(svg, "count(//*[@class='saved'])")).isEqualTo(1);
        assertThat(text(svg, "//*[@class='key']"))
                .contains("hatched both ways: closed", "strokes and dots round: saved")
                .doesNotContain("spare it");
        assertThat(number(svg, "count(//*[local-name()='text'][.='closed' or .='saved'])"))
                .isEqualTo(2);
        Document card = parsed(card(drawing));
        MapFrame frame = new MapFrame(hole, SIZE, SIZE);
        String[] corners =
                text(card, "//*[@class='closed-hatching']/*/@d").substring(1).split("[ML]", -1);
        assertThat(corners).hasSizeGreaterThan(2).allSatisfy(corner -> {
            String[] xy = corner.split(" ", -1);
            MapPoint at = frame.ground(Double.parseDouble(xy[0]), Double.parseDouble(xy[1]));
            assertThat(at.distanceMetres(left)).isLessThan(2.01);
        });
        assertThat(text(parsed(new GreenMap(texts).picture(full())), "//*[@class='key']"))
                .doesNotContain("closed", "saved");
    }

    private static GroundItem ground(GroundItem.Kind kind, MapPoint at, double metres) {
        return new GroundItem(kind, DrawnItem.disc(at, metres), Optional.empty(), Optional.empty());
    }

    private static PersonsOpinion word(Kind kind) {
        return new PersonsOpinion(kind, Optional.empty(), Optional.empty(), Optional.empty());
    }

    private String card(GreenDrawing drawing) {
        return new GreenMap(texts).card(drawing, SIZE, SIZE);
    }

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    private static double number(Document svg, String path) throws Exception {
        return Double.parseDouble(text(svg, path));
    }

    private static String text(Document svg, String path) throws Exception {
        return path().evaluate(path, svg);
    }

    private static XPath path() {
        return XPathFactory.newInstance().newXPath();
    }
}
