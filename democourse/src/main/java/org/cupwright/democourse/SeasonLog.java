package org.cupwright.democourse;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Payload;

/**
 * Puts invented entries into their envelopes. Ids come from the seed and the entry's number, so they are the same every
 * time.
 */
final class SeasonLog {
    /** The invented crew: who changes holes on either nine, and who answers for the greens. */
    static final String FRONT_NINE = "Linnet";

    static final String BACK_NINE = "Moss";
    static final String HEAD = "Alder";

    private final long seed;
    private final String course;
    private final ZoneId zone;
    private final List<Fact> facts = new ArrayList<>();

    SeasonLog(DemoCourse demo) {
        this.seed = demo.seed();
        this.course = demo.course().id();
        this.zone = demo.course().frame().zone();
    }

    /** An entry about one hole's green, written down at once. */
    UUID at(LocalDate day, LocalTime time, String person, String hole, Payload payload) {
        return add(day, time, person, Optional.of(hole), payload);
    }

    /** An entry about the whole course. */
    UUID all(LocalDate day, LocalTime time, String person, Payload payload) {
        return add(day, time, person, Optional.empty(), payload);
    }

    private UUID add(LocalDate day, LocalTime time, String person, Optional<String> hole, Payload payload) {
        String name = course + " season " + seed + " entry " + facts.size();
        UUID id = UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
        Instant happened = day.atTime(time).atZone(zone).toInstant();
        facts.add(new Fact(
                id,
                Fact.CURRENT_VERSION,
                happened,
                happened.plusSeconds(20),
                Optional.empty(),
                person,
                course,
                hole,
                payload));
        return id;
    }

    /** Holes 1 to 9 have one changer, 10 to 18 the other. */
    static String changerOf(String hole) {
        return Integer.parseInt(hole) <= 9 ? FRONT_NINE : BACK_NINE;
    }

    List<Fact> facts() {
        return facts.stream().sorted(Fact.ORDER).toList();
    }
}
