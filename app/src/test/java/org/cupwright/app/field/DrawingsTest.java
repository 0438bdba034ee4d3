package org.cupwright.app.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * The drawings of the hand work: lengths that are stated are true in them. Hole 108 mm wide and at least 101.6 mm deep,
 * cup 25.4 mm below the surface (Rules of Golf, Definition "Hole").
 */
class DrawingsTest {
    private static final Path FILES = Path.of("src/main/resources/org/cupwright/app/field/files");
    private static final double WIDE = 108;
    private static final double LEAST_DEEP = 101.6;
    private static final double CUP_DOWN = 25.4;
    private static final double DRAWN_TO = 0.1;

    private static List<Element> drawings() throws IOException {
        List<Element> drawings = new ArrayList<>();
        for (String sheet : List.of("hole.svg", "plug.svg")) {
            elements(read(FILES.resolve(sheet)), "g").forEach(drawings::add);
        }
        return drawings;
    }

    private static Element read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(in)
                    .getDocumentElement();
        } catch (ParserConfigurationException | SAXException unreadable) {
            throw new IOException(file.toString(), unreadable);
        }
    }

    private static Stream<Element> elements(Element within, String tag) {
        NodeList found = within.getElementsByTagName(tag);
        return Stream.iterate(0, i -> i < found.getLength(), i -> i + 1).map(i -> (Element) found.item(i));
    }

    private static Stream<Element> ofClass(Element drawing, String name) {
        return elements(drawing, "*").filter(one -> one.getAttribute("class").equals(name));
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /** Millimetres to a unit, by the hole. */
    private static double scale(Element hole) {
        return WIDE / number(hole, "width");
    }

    /** A cup stands on the bottom of its hole, an inch below the surface. */
    @Test
    void aCupIsAnInchDown() throws IOException {
        Map<String, Integer> seen = new TreeMap<>();
        for (Element drawing : drawings()) {
            List<Element> holes = ofClass(drawing, "hole")
                    .filter(hole -> hole.hasAttribute("height"))
                    .toList();
            for (Element cup : ofClass(drawing, "cup")
                    .filter(one -> one.hasAttribute("data-top"))
                    .toList()) {
                String name = drawing.getAttribute("id");
                if (!Set.of("cup", "white", "flag", "rim").contains(name)) {
                    continue; // on its way
                }
                Element hole = holes.get(Math.min(holes.size() - 1, seen.getOrDefault(name, 0)));
                double down = (number(cup, "data-top") - number(hole, "y")) * scale(hole);
                assertThat(down).as(name).isCloseTo(CUP_DOWN, within(DRAWN_TO));
                seen.merge(name, 1, Integer::sum);
            }
        }
        assertThat(seen).containsOnlyKeys("cup", "white", "flag", "rim");
    }

    @Test
    void aHoleThatIsCutIsDeepEnough() throws IOException {
        Set<String> seen = new TreeSet<>();
        for (Element drawing : drawings()) {
            String name = drawing.getAttribute("id");
            if (Set.of("half", "hammer", "upper", "water", "look", "last").contains(name)) {
                continue; // not to its depth yet, not to the bottom of the drawing, or seen from afar
            }
            ofClass(drawing, "hole").forEach(hole -> {
                seen.add(name);
                assertThat(number(hole, "height") * scale(hole)).as(name).isGreaterThanOrEqualTo(LEAST_DEEP);
            });
        }
        assertThat(seen)
                .contains("full", "draw", "lower", "old", "cup", "white", "clear", "plug", "roll", "flag", "halves");
    }

    /** The measure that is drawn beside the cup is the inch itself, in millimetres as all of that drawing. */
    @Test
    void theInchIsDrawnAsAnInch() throws IOException {
        Element cup = drawings().stream()
                .filter(one -> one.getAttribute("id").equals("cup"))
                .findFirst()
                .orElseThrow();
        Element hole = ofClass(cup, "hole").findFirst().orElseThrow();
        assertThat(number(hole, "width")).isEqualTo(WIDE);
        String measure = ofClass(cup, "measure").findFirst().orElseThrow().getAttribute("d");
        double[] heights = Stream.of(measure.replaceAll("h[0-9.]+", "").split("M"))
                .filter(point -> !point.isBlank())
                .mapToDouble(point -> Double.parseDouble(point.strip().split(" ")[1]))
                .toArray();
        assertThat(heights).hasSize(2);
        assertThat(heights[0]).isEqualTo(number(hole, "y"));
        assertThat(heights[1] - heights[0]).isCloseTo(CUP_DOWN, within(DRAWN_TO));
    }

    /** Ink of the page, light or dark: no colour of a drawing's own, no words, nothing from elsewhere. */
    @Test
    void drawingsHaveNoColourAndNoWordsOfTheirOwn() throws IOException {
        assertThat(drawings()).hasSizeGreaterThanOrEqualTo(20).allSatisfy(drawing -> {
            assertThat(drawing.getAttribute("stroke")).isEqualTo("currentColor");
            assertThat(elements(drawing, "text")).isEmpty();
            assertThat(elements(drawing, "*")).allSatisfy(one -> {
                assertThat(one.getAttribute("style")).isEmpty();
                assertThat(one.getAttribute("stroke-width")).isEmpty();
                for (String paint : List.of("fill", "stroke")) {
                    assertThat(one.getAttribute(paint))
                            .isIn("", "none", "url(#hatched-soil)", "url(#hatched-core)", "var(--accent, #a4431d)");
                }
            });
        });
    }
}
