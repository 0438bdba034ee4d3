package org.cupwright.app.maps;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.GroundItem;
import org.cupwright.green.PersonsOpinion.Kind;
import org.cupwright.policy.EnumNames;

/** The strip under a picture: what it shows, and what its signs mean. */
record MapKey(GreenDrawing drawing, MapStyle style, Texts texts) {
    private static final double LINE = 1.5;

    /** So many are said under the picture, the worst first: our choice. */
    private static final int MOST_FINDINGS = 9;

    /** How high the strip is for a drawing so wide. */
    int height(int width) {
        return (int) Math.ceil((lines(width).size() + 1) * LINE * style.em() + style.em());
    }

    void draw(int width, int height, Svg svg) {
        double em = style.em();
        double x = 0.6 * em;
        double y = height - height(width) + LINE * em;
        svg.group("title", MapStyle.fill(MapStyle.INK));
        svg.text(OpenSans.SEMIBOLD, em, false, x, y, drawing.title()).end();
        svg.group("key", MapStyle.fill(MapStyle.INK));
        for (String line : lines(width)) {
            y += LINE * em;
            svg.text(OpenSans.REGULAR, em, false, x, y, line);
        }
        svg.end();
    }

    private List<String> lines(int width) {
        List<String> lines = new ArrayList<>(wrapped("", signs(), " · ", "", width));
        for (int i = 0; i < Math.min(MOST_FINDINGS, drawing.findings().size()); i++) {
            String sentence = texts.say(drawing.findings().get(i).finding().says());
            lines.addAll(wrapped(i + 1 + "  ", List.of(sentence.split(" ", -1)), " ", "    ", width));
        }
        if (drawing.findings().size() > MOST_FINDINGS) {
            lines.add(texts.say("map.key.moreFindings", drawing.findings().size() - MOST_FINDINGS));
        }
        return lines;
    }

    /** As many parts a line as fit; the first line and those after it begin with something. */
    private List<String> wrapped(String start, List<String> parts, String between, String further, int width) {
        List<String> lines = new ArrayList<>();
        String line = start + parts.get(0);
        for (String part : parts.subList(1, parts.size())) {
            String longer = line + between + part;
            boolean fits = OpenSans.REGULAR.width(longer, style.em()) <= width - style.em();
            if (!fits) {
                lines.add(line);
            }
            line = fits ? longer : further + part;
        }
        lines.add(line);
        return lines;
    }

    /** What is on the drawing and what is not, in the order in which it is said. */
    List<String> signs() {
        Map<String, Boolean> shown = new LinkedHashMap<>();
        shown.put("map.key.hatched", drawing.ground().judged());
        shown.put("map.key.clear", drawing.ground().judged());
        shown.put("map.key.dotted", !drawing.oldHoles().isEmpty());
        shown.put("map.key.oldHole", !drawing.oldHoles().isEmpty());
        for (GroundItem.Kind kind : MarkedLayer.KINDS) {
            boolean marked = drawing.ground().marked().stream().anyMatch(item -> item.kind() == kind);
            shown.put("map.key.ground." + EnumNames.lowerCamel(kind), marked);
        }
        for (Kind kind : List.of(Kind.GOOD, Kind.BAD, Kind.USUAL)) {
            boolean said = drawing.drawn().stream().anyMatch(item -> item.word().kind() == kind);
            shown.put("map.key.drawn." + EnumNames.lowerCamel(kind), said);
        }
        shown.put("map.key.area", drawing.areas().stream().anyMatch(area -> !area.today()));
        shown.put("map.key.areaToday", drawing.areas().stream().anyMatch(AreaOnMap::today));
        shown.put("map.key.contours", drawing.surface().isPresent());
        shown.put("map.key.noContours", drawing.surface().isEmpty() && !drawing.about());
        shown.put("map.key.edge", drawing.about());
        shown.put("map.key.line", drawing.about() && drawing.hole().lineOfPlay().isPresent());
        shown.put("map.key.notSurveyed", drawing.surface().isPresent());
        shown.put("map.key.slopes", !drawing.slopes().isEmpty());
        shown.put("map.key.spot", !drawing.spots().isEmpty());
        shown.put("map.key.mark", !drawing.hole().marks().isEmpty());
        shown.put("map.key.hazards", !drawing.hole().hazards().isEmpty());
        shown.put(
                "map.key.finding",
                drawing.findings().stream()
                        .anyMatch(found -> found.finding().place().isPresent()));
        return shown.entrySet().stream()
                .filter(Map.Entry::getValue)
                .map(sign -> texts.say(sign.getKey()))
                .toList();
    }
}
