package org.cupwright.app.sheets;

import java.awt.geom.Point2D;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A drawing read as plain XML: groups by their class, paths by their letters; y turned to grow up the page. */
final class SeenSvg {
    private static final Pattern PIECE = Pattern.compile("([MLHVmlhvZ])([^MLHVmlhvZ]*)");
    private static final Pattern ROTATE = Pattern.compile("rotate\\(([-0-9.]+) ([-0-9.]+) ([-0-9.]+)\\)");

    private final Document document;

    SeenSvg(String svg) throws Exception {
        document =
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    SeenDrawing drawing() {
        Element north = group("north");
        Matcher turn = ROTATE.matcher(north.getAttribute("transform"));
        if (!turn.matches()) {
            throw new IllegalStateException("north does not turn: " + north.getAttribute("transform"));
        }
        List<Point2D> needle = path(group("needle"));
        List<Point2D> bar = path(group("scale"));
        return new SeenDrawing(
                ring("edge"),
                ring("hazard"),
                up(middle(path(group("mark")))),
                circle("spot"),
                up(turned(needle.get(0), turn)),
                up(turned(needle.get(1), turn)),
                List.of(up(bar.get(1)), up(bar.get(2))),
                path(group("play")).stream().limit(2).map(SeenSvg::up).toList());
    }

    /** The corners of what is drawn under a name; none where nothing is. */
    List<Point2D> corners(String name) {
        NodeList all = document.getElementsByTagName("g");
        for (int i = 0; i < all.getLength(); i++) {
            if (((Element) all.item(i)).getAttribute("class").equals(name)) {
                return ring(name);
            }
        }
        return List.of();
    }

    /** Where a text begins; empty where it is not written by itself. */
    Optional<Point2D> written(String text) {
        NodeList all = document.getElementsByTagName("text");
        for (int i = 0; i < all.getLength(); i++) {
            Element one = (Element) all.item(i);
            if (one.getTextContent().equals(text)) {
                return Optional.of(up(new Point2D.Double(
                        Double.parseDouble(one.getAttribute("x")), Double.parseDouble(one.getAttribute("y")))));
            }
        }
        return Optional.empty();
    }

    /** Both ends of every stroke of the ground that is not to be cut. */
    List<Point2D> hatching() {
        return path(group("not-to-cut")).stream().map(SeenSvg::up).toList();
    }

    /** A turn by so many degrees with the clock about a point, as the format has it: y grows down. */
    private static Point2D turned(Point2D at, Matcher turn) {
        double angle = Math.toRadians(Double.parseDouble(turn.group(1)));
        double x = Double.parseDouble(turn.group(2));
        double y = Double.parseDouble(turn.group(3));
        double dx = at.getX() - x;
        double dy = at.getY() - y;
        return new Point2D.Double(
                x + dx * Math.cos(angle) - dy * Math.sin(angle), y + dx * Math.sin(angle) + dy * Math.cos(angle));
    }

    private static Point2D up(Point2D point) {
        return new Point2D.Double(point.getX(), -point.getY());
    }

    private Element group(String name) {
        NodeList all = document.getElementsByTagName("g");
        for (int i = 0; i < all.getLength(); i++) {
            Element group = (Element) all.item(i);
            if (group.getAttribute("class").equals(name)) {
                return group;
            }
        }
        throw new IllegalStateException("nothing is drawn as " + name);
    }

    private Point2D circle(String name) {
        Element circle = (Element) group(name).getElementsByTagName("circle").item(0);
        return up(new Point2D.Double(
                Double.parseDouble(circle.getAttribute("cx")), Double.parseDouble(circle.getAttribute("cy"))));
    }

    /** A ring's corners without the first once more. */
    private List<Point2D> ring(String name) {
        List<Point2D> corners = path(group(name));
        return corners.subList(0, corners.size() - 1).stream().map(SeenSvg::up).toList();
    }

    static Point2D middle(List<Point2D> points) {
        double left = points.stream().mapToDouble(Point2D::getX).min().orElseThrow();
        double right = points.stream().mapToDouble(Point2D::getX).max().orElseThrow();
        double low = points.stream().mapToDouble(Point2D::getY).min().orElseThrow();
        double high = points.stream().mapToDouble(Point2D::getY).max().orElseThrow();
        return new Point2D.Double((left + right) / 2, (low + high) / 2);
    }

    private static List<Point2D> path(Element group) {
        Node path = group.getElementsByTagName("path").item(0);
        List<Point2D> points = new ArrayList<>();
        Matcher pieces = PIECE.matcher(((Element) path).getAttribute("d"));
        double x = 0;
        double y = 0;
        while (pieces.find()) {
            String[] numbers = pieces.group(2).strip().split("[ ,]+", -1);
            String letter = pieces.group(1);
            boolean from = letter.equals(letter.toLowerCase(Locale.ROOT));
            switch (letter.toLowerCase(Locale.ROOT)) {
                case "h" -> x = (from ? x : 0) + Double.parseDouble(numbers[0]);
                case "v" -> y = (from ? y : 0) + Double.parseDouble(numbers[0]);
                case "z" -> {
                    continue;
                }
                default -> {
                    x = (from ? x : 0) + Double.parseDouble(numbers[0]);
                    y = (from ? y : 0) + Double.parseDouble(numbers[1]);
                }
            }
            points.add(new Point2D.Double(x, y));
        }
        return points;
    }
}
