package org.cupwright.app.maps;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.PersonsOpinion.Kind;
import org.cupwright.policy.EnumNames;

/** The strip under a picture: what it shows, and what its signs mean. */
final class MapKey {
    private static final double LINE = 1.5;

    /** So many are said under the picture, the worst first: our choice. */
    private static final int MOST_FINDINGS = 9;

    private final GreenDrawing drawing;
    private final MapStyle style;
    private final Texts texts;

    MapKey(GreenDrawing drawing, MapStyle style, Texts texts) {
        this.drawing = drawing;
        this.style = style;
        this.texts = texts;
    }

    /** How high the strip is for a drawing so wide. */
    int height(int width) {
        return (int) Math.ceil((lines(width).size() + 1) * LINE * style.em() + style.em());
    }

    void draw(int width, int height, Svg svg) {
        double x = 0.6 * style.em();
        double y = height - height(width) + LINE * style.em();
        svg.group("title", MapStyle.fill(MapStyle.INK));
        svg.text(style.letters().semibold(), x, y, drawing.title()).end();
        svg.group("key", MapStyle.fill(MapStyle.INK));
        for (String line : lines(width)) {
            y += LINE * style.em();
            svg.text(style.letters(), x, y, line);
        }
        svg.end();
    }

    /** As many signs a line as fit. */
    private List<String> lines(int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String sign : signs()) {
            String longer = line.isEmpty() ? sign : line + " · " + sign;
            if (style.letters().width(longer) > width - style.em() && !line.isEmpty()) {
                lines.add(line.toString());
                line = new StringBuilder(sign);
            } else {
                line = new StringBuilder(longer);
            }
        }
        lines.add(line.toString());
        drawing.findings().stream().limit(MOST_FINDINGS).forEach(finding -> lines.addAll(said(finding, width)));
        if (drawing.findings().size() > MOST_FINDINGS) {
            lines.add(texts.say("map.key.moreFindings", drawing.findings().size() - MOST_FINDINGS));
        }
        return lines;
    }

    /** A finding's sentence after its number, in as many lines as it takes. */
    private List<String> said(FindingOnMap finding, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(finding.number() + " ");
        for (String word : texts.say(finding.says()).split(" ", -1)) {
            if (style.letters().width(line + " " + word) > width - style.em()) {
                lines.add(line.toString());
                line = new StringBuilder("   ");
            }
            line.append(' ').append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private void drawn(List<String> signs) {
        Set<Kind> kinds = EnumSet.noneOf(Kind.class);
        drawing.drawn().forEach(item -> kinds.add(item.word().kind()));
        kinds.forEach(kind -> signs.add(texts.say("map.key.drawn." + EnumNames.lowerCamel(kind))));
    }

    private List<String> signs() {
        List<String> signs = new ArrayList<>();
        signs.add(texts.say("map.key.hatched"));
        signs.add(texts.say("map.key.clear"));
        if (!drawing.oldHoles().isEmpty()) {
            signs.add(texts.say("map.key.dotted"));
            signs.add(texts.say("map.key.oldHole"));
        }
        drawn(signs);
        signs.add(texts.say(drawing.surface().isPresent() ? "map.key.contours" : "map.key.noContours"));
        if (drawing.surface().isPresent()) {
            signs.add(texts.say("map.key.notSurveyed"));
        }
        if (!drawing.slopes().isEmpty()) {
            signs.add(texts.say("map.key.slopes"));
        }
        if (!drawing.spots().isEmpty()) {
            signs.add(texts.say("map.key.spot"));
        }
        if (!drawing.hole().marks().isEmpty()) {
            signs.add(texts.say("map.key.mark"));
        }
        if (!drawing.hole().hazards().isEmpty()) {
            signs.add(texts.say("map.key.hazards"));
        }
        if (drawing.findings().stream().anyMatch(finding -> finding.at().isPresent())) {
            signs.add(texts.say("map.key.finding"));
        }
        return signs;
    }
}
