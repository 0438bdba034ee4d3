package org.cupwright.formats.outlines;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.Hazard;
import org.cupwright.course.Tee;
import org.cupwright.finding.Finding;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.formats.Projection;
import org.locationtech.jts.geom.Polygon;

/** Bunkers, water and tees of a map file, and which of them belong to a hole. */
final class Surroundings {
    /**
     * Hazards are kept within this distance of a green, m: four times the five paces that matter to a hole location, so
     * that a map of the green shows what lies about it. Our choice.
     */
    static final double HAZARD_REACH_METRES = 20;

    /** A line of play starts on its tee or this near to it, m. Our choice. */
    static final double TEE_REACH_METRES = 30;

    private final List<Hazard> hazards = new ArrayList<>();
    private final List<MapTee> tees = new ArrayList<>();
    private final Projection toCourse;
    private final List<Finding> findings;

    private record MapTee(Optional<String> ref, Tee tee) {}

    Surroundings(List<MapFeature> features, Projection toCourse, List<Finding> findings) {
        this.toCourse = toCourse;
        this.findings = findings;
        features.forEach(this::add);
    }

    private void add(MapFeature feature) {
        switch (feature.tag("golf").orElse("")) {
            case "bunker" -> addHazard(Hazard.Kind.BUNKER, feature);
            case "water_hazard", "lateral_water_hazard" -> addHazard(Hazard.Kind.WATER, feature);
            case "tee" -> addTee(feature);
            default -> {
                // fairways, paths and the rest say nothing about where a hole may be
            }
        }
    }

    private void addHazard(Hazard.Kind kind, MapFeature feature) {
        parts(feature).forEach(part -> hazards.add(new Hazard(kind, part)));
    }

    private void addTee(MapFeature feature) {
        String name = feature.tag("name").or(() -> feature.tag("tee")).orElse("");
        parts(feature).forEach(part -> tees.add(new MapTee(feature.tag("ref"), new Tee(name, part))));
    }

    private List<Polygon> parts(MapFeature feature) {
        try {
            return Polygons.of(feature, toCourse);
        } catch (UnreadableFile trouble) {
            findings.add(MapFeature.leftOut(trouble.finding()));
            return List.of();
        }
    }

    List<Hazard> hazardsNear(Polygon green) {
        return hazards.stream()
                .filter(hazard -> hazard.area().isWithinDistance(green, HAZARD_REACH_METRES))
                .toList();
    }

    /**
     * The tees at the start of a hole's line; where no line is drawn, those that carry its ref, if no other hole has
     * the same.
     */
    List<Tee> teesOf(HoleDraft draft, List<HoleDraft> all) {
        long namesakes =
                all.stream().filter(other -> other.ref().equals(draft.ref())).count();
        boolean byRef = draft.line().isEmpty() && draft.ref().isPresent() && namesakes == 1;
        return tees.stream()
                .filter(tee -> byRef ? tee.ref.equals(draft.ref()) : startsAt(tee.tee, draft))
                .map(MapTee::tee)
                .toList();
    }

    private static boolean startsAt(Tee tee, HoleDraft draft) {
        return draft.line()
                .map(HoleLine::tee)
                .filter(start -> tee.area().isWithinDistance(start.toPoint(), TEE_REACH_METRES))
                .isPresent();
    }
}
