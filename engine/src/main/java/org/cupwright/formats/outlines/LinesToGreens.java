package org.cupwright.formats.outlines;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.message.Message;

/**
 * Gives every line of play to the green at its end (the last node of a golf=hole line is the hole), and says which
 * holes each green has.
 */
final class LinesToGreens {
    /**
     * A line may end short of the green it leads to by this much, m; beyond it the match would be a guess. Our choice.
     */
    static final double REACH_METRES = 40;

    private final List<GreenShape> greens;
    private final List<Finding> findings;
    private final Map<GreenShape, List<HoleLine>> linesOf = new LinkedHashMap<>();

    private LinesToGreens(List<GreenShape> greens, List<Finding> findings) {
        this.greens = greens;
        this.findings = findings;
        greens.forEach(green -> linesOf.put(green, new ArrayList<>()));
    }

    /** One draft for every hole of every green, greens in their order. */
    static List<HoleDraft> match(List<GreenShape> greens, List<HoleLine> lines, List<Finding> findings) {
        LinesToGreens match = new LinesToGreens(greens, findings);
        lines.forEach(match::give);
        List<HoleDraft> drafts = new ArrayList<>();
        greens.forEach(green -> drafts.addAll(match.holesOf(green)));
        return drafts;
    }

    private void give(HoleLine line) {
        GreenShape nearest = null;
        double least = Double.POSITIVE_INFINITY;
        for (GreenShape green : greens) {
            if (green.practice()) {
                continue; // no hole is played to it, however near a line ends
            }
            double away = away(green.outline(), line.end());
            if (away < least) {
                least = away;
                nearest = green;
            }
        }
        if (nearest != null && least <= REACH_METRES) {
            linesOf.get(nearest).add(line);
        } else {
            findings.add(unmatched(line, least));
        }
    }

    private Finding unmatched(HoleLine line, double awayMetres) {
        boolean startsOnGreen =
                greens.stream().anyMatch(green -> green.outline().contains(line.tee()));
        FindingKind kind = startsOnGreen ? FindingKind.LINE_DRAWN_BACKWARDS : FindingKind.LINE_ENDS_FAR_FROM_GREEN;
        return Finding.of(kind, line.where(), new Message.Length(awayMetres)).at(line.end());
    }

    private static double away(Outline green, MapPoint point) {
        return green.contains(point) ? 0 : green.distanceToEdgeMetres(point);
    }

    private static List<HoleDraft> practiceHoles(GreenShape green) {
        return IntStream.rangeClosed(1, green.cups().orElse(1))
                .mapToObj(cup -> new HoleDraft(green, Optional.empty(), Optional.of(green.cupName(cup))))
                .toList();
    }

    private List<HoleDraft> holesOf(GreenShape green) {
        if (green.practice()) {
            return practiceHoles(green);
        }
        Map<String, HoleDraft> drafts = new LinkedHashMap<>();
        for (HoleLine line : linesOf.get(green)) {
            Optional<String> ref = line.ref().or(() -> green.refs().stream().findFirst());
            drafts.putIfAbsent(ref.orElse(""), new HoleDraft(green, Optional.of(line), ref));
        }
        boolean agree = drafts.isEmpty() || green.refs().stream().anyMatch(drafts::containsKey);
        if (agree) {
            List<String> twice = linesOf.get(green).stream()
                    .flatMap(line -> line.refs().stream().skip(1))
                    .toList();
            green.refs().stream()
                    .filter(ref -> !twice.contains(ref))
                    .forEach(ref -> drafts.putIfAbsent(ref, new HoleDraft(green, Optional.empty(), Optional.of(ref))));
        } else if (!green.refs().isEmpty()) {
            findings.add(disagreement(green, drafts));
        }
        if (drafts.isEmpty()) {
            return List.of(new HoleDraft(green, Optional.empty(), Optional.empty()));
        }
        if (green.cups().orElse(0) == 1) {
            return drafts.values().stream()
                    .min(Comparator.comparing(draft -> draft.ref().orElse(""), RoundOrder.byName()))
                    .stream()
                    .toList();
        }
        tellIfShared(green, drafts);
        return List.copyOf(drafts.values());
    }

    private static Finding disagreement(GreenShape green, Map<String, HoleDraft> byRef) {
        return Finding.of(FindingKind.REF_DISAGREES, green.where(), String.join(", ", green.refs()))
                .trying(String.join(", ", byRef.keySet()))
                .at(green.outline().centroid());
    }

    private void tellIfShared(GreenShape green, Map<String, HoleDraft> byRef) {
        if (byRef.size() > 1) {
            String names = byRef.keySet().stream().collect(Collectors.joining(", "));
            findings.add(Finding.of(FindingKind.HOLES_SHARE_GREEN, green.where(), names)
                    .at(green.outline().centroid()));
        }
    }
}
