package org.cupwright.app.cli;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/**
 * Checks plans of several days as scripts read them, by places and dates alone: it shares no code with what made them.
 * Distances, days and limits are the settings' defaults, written out.
 */
final class WeeksChecker {
    /** Metres between a hole and an old one whose ground rests. */
    private static final double REST_METRES = 2.74;

    private static final int MOST_LEFT_RIGHT = 2;

    private record Hole(LocalDate day, String hole, double east, double north, JsonNode node) {
        /** Whether it is the hole of the day before. */
        boolean stays() {
            return !node.path("staysSince").isNull();
        }

        double from(Hole other) {
            return Math.hypot(east - other.east, north - other.north);
        }

        boolean setAside(String rule) {
            boolean found = false;
            for (JsonNode named : node.path("setAside")) {
                found |= named.asString().equals(rule);
            }
            return found;
        }
    }

    private final List<String> faults = new ArrayList<>();
    private final List<Hole> holes = new ArrayList<>();
    private final int restDays;

    /** @param restDays how many days ground rests at least, the day on which the hole was left included */
    WeeksChecker(int restDays) {
        this.restDays = restDays;
    }

    /** What is wrong with a plan; nothing where all is well. */
    List<String> faults(JsonNode plan) {
        for (JsonNode day : plan.path("days")) {
            LocalDate date = LocalDate.parse(day.path("date").asString());
            Map<String, Integer> thirds = new HashMap<>();
            Map<String, Integer> sides = new HashMap<>();
            Set<String> seen = new HashSet<>();
            for (JsonNode hole : day.path("holes")) {
                String name = hole.path("hole").asString();
                JsonNode at = hole.path("position");
                holes.add(new Hole(
                        date, name, at.path("east").asDouble(), at.path("north").asDouble(), hole));
                thirds.merge(at.path("third").asString(), 1, Integer::sum);
                sides.merge(at.path("lateral").asString(), 1, Integer::sum);
                if (!seen.add(name)) {
                    faults.add(date + ": hole " + name + " stands twice");
                }
                if (Set.of("fail", "notSurveyed").contains(hole.path("verdict").asString())) {
                    faults.add(date + ": hole " + name + " is where none may be");
                }
            }
            same(date, day.path("totals").path("thirds"), thirds, List.of("front", "middle", "back"));
            same(date, day.path("totals").path("laterals"), sides, List.of("left", "centre", "right"));
            balanced(date, thirds, sides);
        }
        rested();
        stayed();
        return faults;
    }

    private void same(LocalDate date, JsonNode told, Map<String, Integer> counted, List<String> parts) {
        for (String part : parts) {
            if (told.path(part).asInt() != counted.getOrDefault(part, 0)) {
                faults.add(date + ": totals say " + told + ", its holes are " + counted);
            }
        }
    }

    private void balanced(LocalDate date, Map<String, Integer> thirds, Map<String, Integer> sides) {
        int most = thirds.values().stream().mapToInt(Integer::intValue).max().orElse(0);
        int least = List.of("front", "middle", "back").stream()
                .mapToInt(third -> thirds.getOrDefault(third, 0))
                .min()
                .orElse(0);
        if (most - least > 1) {
            faults.add(date + ": " + thirds);
        }
        if (Math.abs(sides.getOrDefault("left", 0) - sides.getOrDefault("right", 0)) > MOST_LEFT_RIGHT) {
            faults.add(date + ": " + sides);
        }
    }

    /** A hole that stays is where it was the day before, and was cut when that says. */
    private void stayed() {
        for (Hole stays : holes) {
            for (Hole before : holes) {
                boolean yesterday =
                        before.hole.equals(stays.hole) && before.day.plusDays(1).equals(stays.day);
                if (yesterday
                        && stays.stays()
                        && (before.from(stays) > 0 || !since(before).equals(since(stays)))) {
                    faults.add("hole " + stays.hole + " stays on " + stays.day + " where it was not the day before");
                }
            }
        }
    }

    private static LocalDate since(Hole hole) {
        return hole.stays() ? LocalDate.parse(hole.node.path("staysSince").asString()) : hole.day;
    }

    /** A hole is left on the day after the last on which it was there; one that stays is not left. */
    private void rested() {
        for (Hole earlier : holes) {
            for (Hole later : holes) {
                long days = ChronoUnit.DAYS.between(earlier.day, later.day);
                boolean rests = days > 0 && days <= restDays && earlier.hole.equals(later.hole) && !later.stays();
                if (rests && earlier.from(later) < REST_METRES && !later.setAside("oldHole")) {
                    faults.add("hole " + later.hole + ": " + later.day + " is " + earlier.from(later) + " m from "
                            + earlier.day);
                }
            }
        }
    }

    /** Holes that are cut though something had to be set aside. */
    long setAside() {
        return holes.stream()
                .filter(hole -> !hole.stays())
                .filter(hole -> !hole.node.path("setAside").isEmpty())
                .count();
    }
}
