package org.cupwright.app.cli;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.cli.MadeWeeksCourse.Box;
import org.cupwright.app.cli.MadeWeeksCourse.Old;
import tools.jackson.databind.JsonNode;

/**
 * Checks the plan of an invented course as scripts read it, against what the course is in plain numbers: every hard
 * rule, what is said to be set aside, and every sum. Shares no code with what made the plan.
 */
final class MadeWeeksChecker {
    private static final double PACE = 0.9144;
    private static final double SMALL = 0.01;

    private record Hole(LocalDate day, String name, double east, double north, JsonNode node) {
        boolean setAside() {
            return !node.path("setAside").isEmpty();
        }

        boolean setAside(String wanted) {
            boolean found = false;
            for (JsonNode rule : node.path("setAside")) {
                found |= rule.asString().equals(wanted);
            }
            return found;
        }

        double from(double otherEast, double otherNorth) {
            return Math.hypot(east - otherEast, north - otherNorth);
        }
    }

    private final MadeWeeksCourse course;
    private final JsonNode plan;
    private final List<Hole> holes = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();

    MadeWeeksChecker(MadeWeeksCourse course, JsonNode plan) {
        this.course = course;
        this.plan = plan;
        for (JsonNode day : plan.path("days")) {
            LocalDate date = LocalDate.parse(day.path("date").asString());
            for (JsonNode hole : day.path("holes")) {
                JsonNode at = hole.path("position");
                holes.add(new Hole(
                        date,
                        hole.path("hole").asString(),
                        at.path("east").asDouble(),
                        at.path("north").asDouble(),
                        hole));
            }
        }
    }

    long setAside() {
        return holes.stream().filter(Hole::setAside).count();
    }

    List<String> faults() {
        everyGreenHasItsHole();
        holes.forEach(this::place);
        holes.forEach(this::rest);
        double near = 0;
        double close = 0;
        for (Hole hole : holes) {
            double away = fromYesterday(hole);
            near += Math.max(0, 5 - away);
            close += Math.max(0, 10 - away);
        }
        sum("nearYesterday", near);
        sum("closeToYesterday", close);
        balance();
        causes();
        return faults;
    }

    private void everyGreenHasItsHole() {
        if (plan.path("days").size() != course.days) {
            faults.add("there are " + plan.path("days").size() + " days of " + course.days);
        }
        for (JsonNode day : plan.path("days")) {
            List<String> there = new ArrayList<>();
            day.path("holes").forEach(hole -> there.add(hole.path("hole").asString()));
            for (Box green : course.greens) {
                long times = there.stream().filter(green.hole()::equals).count();
                boolean leftOut = day.path("findings").toString().contains("left out: " + green.hole());
                if (times != (leftOut ? 0 : 1)) {
                    faults.add(day.path("date") + ": hole " + green.hole() + " is there " + times + " times");
                }
            }
        }
    }

    private Box box(String hole) {
        return course.greens.stream()
                .filter(green -> green.hole().equals(hole))
                .findFirst()
                .orElseThrow();
    }

    private void place(Hole hole) {
        String verdict = hole.node.path("verdict").asString();
        if (!verdict.equals("pass") && !verdict.equals("caution")) {
            faults.add(hole.name + " on " + hole.day + " is " + verdict);
        }
        double edge = box(hole.name).edgeMetres(hole.east, hole.north);
        boolean eased = hole.setAside("edge"); // half the distance, as the course allows before the rest of old holes
        double least = verdict.equals("pass") && !eased ? 4 * PACE : 2 * PACE;
        if (eased && edge > 4 * PACE + SMALL) {
            faults.add(hole.name + " on " + hole.day + " is " + edge + " m from the edge, which is set aside");
        }
        if (edge < least - SMALL) {
            faults.add(hole.name + " on " + hole.day + " is " + edge + " m from the edge, " + verdict);
        }
        course.closed.stream()
                .filter(circle -> circle.hole().equals(hole.name))
                .filter(circle -> hole.from(circle.east(), circle.north()) < circle.radius() - 0.1)
                .forEach(circle -> faults.add(hole.name + " on " + hole.day + " is on closed ground"));
    }

    /** Ground rests so many days, the day included on which a hole was left; planned holes are left the next day. */
    private void rest(Hole hole) {
        double nearest = Double.POSITIVE_INFINITY;
        for (Hole before : holes) {
            long days = ChronoUnit.DAYS.between(before.day, hole.day);
            if (before.name.equals(hole.name) && days > 0 && days <= course.restDays) {
                nearest = Math.min(nearest, hole.from(before.east, before.north));
            }
        }
        for (Old old : course.old) {
            boolean rests = ChronoUnit.DAYS.between(old.leftOn(), hole.day) < course.restDays;
            if (old.hole().equals(hole.name) && rests) {
                nearest = Math.min(nearest, hole.from(old.east(), old.north()));
            }
        }
        if (nearest < course.restMetres - SMALL && !hole.setAside("oldHole")) {
            faults.add(hole.name + " on " + hole.day + " is " + nearest + " m from ground that rests");
        }
        if (nearest > course.restMetres + SMALL && hole.setAside("oldHole")) {
            faults.add(hole.name + " on " + hole.day + " is on rested ground, " + nearest + " m away");
        }
    }

    private double fromYesterday(Hole hole) {
        Optional<Hole> yesterday = holes.stream()
                .filter(before ->
                        before.name.equals(hole.name) && before.day.plusDays(1).equals(hole.day))
                .findFirst();
        if (yesterday.isPresent()) {
            return hole.from(yesterday.get().east, yesterday.get().north);
        }
        return course.old.stream()
                .filter(old -> old.hole().equals(hole.name) && hole.day.equals(MadeWeeksCourse.FIRST))
                .reduce((earlier, later) -> later)
                .map(old -> hole.from(old.east(), old.north()))
                .orElse(Double.POSITIVE_INFINITY);
    }

    private void balance() {
        double care = 0;
        double leftRight = 0;
        double lateral = 0;
        for (JsonNode day : plan.path("days")) {
            Map<String, Integer> thirds = new HashMap<>();
            Map<String, Integer> sides = new HashMap<>();
            for (JsonNode hole : day.path("holes")) {
                thirds.merge(hole.path("position").path("third").asString(), 1, Integer::sum);
                sides.merge(hole.path("position").path("lateral").asString(), 1, Integer::sum);
                care += hole.path("verdict").asString().equals("pass") ? 0 : 1;
            }
            same(day, "thirds", thirds, List.of("front", "middle", "back"));
            same(day, "laterals", sides, List.of("left", "centre", "right"));
            leftRight += Math.max(0, Math.abs(sides.getOrDefault("left", 0) - sides.getOrDefault("right", 0)) - 2);
            lateral += off(sides, List.of("left", "centre", "right"));
            boolean even = off(thirds, List.of("front", "middle", "back")) == 0;
            boolean told = day.path("findings").toString().contains("Front, middle and back could not be even");
            if (course.balancesThirds && even == told) {
                faults.add(day.path("date") + ": " + thirds + (told ? " is" : " is not") + " called uneven");
            }
        }
        sum("care", care);
        sum("leftRight", leftRight);
        sum("lateral", lateral);
    }

    private static int off(Map<String, Integer> counts, List<String> parts) {
        int all = counts.values().stream().mapToInt(Integer::intValue).sum();
        int over = 0;
        int under = 0;
        for (String part : parts) {
            int count = counts.getOrDefault(part, 0);
            over += Math.max(0, count - (all + 2) / 3);
            under += Math.max(0, all / 3 - count);
        }
        return Math.max(over, under);
    }

    private void same(JsonNode day, String split, Map<String, Integer> counted, List<String> parts) {
        JsonNode told = day.path("totals").path(split);
        for (String part : parts) {
            if (told.path(part).asInt() != counted.getOrDefault(part, 0)) {
                faults.add(day.path("date") + ": totals say " + told + ", its holes are " + counted);
            }
        }
    }

    private void sum(String term, double counted) {
        double told = plan.path("terms").path(term).asDouble();
        if (Math.abs(told - counted) > SMALL * (holes.size() + 1)) {
            faults.add(term + " is told as " + told + ", counted as " + counted);
        }
        JsonNode least = plan.path("leastOfAll").path("terms").path(term);
        if (!least.isMissingNode() && least.asDouble() > counted + SMALL) {
            faults.add(term + " is " + counted + ", said to be " + least + " at least");
        }
    }

    /** Every hole with a rule set aside has its cause, and none is proved that is not there. */
    private void causes() {
        long explained = 0;
        long atLeast = 0;
        for (JsonNode shortage : plan.path("shortages")) {
            explained += shortage.path("holesSetAside").asInt();
            atLeast += shortage.path("atLeast").asInt();
            String hole = shortage.path("holes").path(0).asString();
            long there = holes.stream()
                    .filter(one -> one.name.equals(hole) && one.setAside())
                    .count();
            if (there != shortage.path("holesSetAside").asInt()
                    || there < shortage.path("atLeast").asInt()) {
                faults.add("hole " + hole + " has " + there + " with a rule set aside: " + shortage);
            }
        }
        if (explained != setAside()
                || atLeast != plan.path("leastOfAll").path("holesSetAside").asInt()) {
            faults.add(setAside() + " holes have a rule set aside, causes are told for " + explained);
        }
    }
}
