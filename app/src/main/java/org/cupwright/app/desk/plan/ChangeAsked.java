package org.cupwright.app.desk.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What a person wants otherwise in the plans of coming days.
 *
 * @param wishes of single holes
 * @param swaps holes whose spots of two days are exchanged
 * @param spoiled holes whose spot is spoiled: no hole is to be there on any coming day
 * @param days how many of the planned days may be changed, from the first; empty: all of them
 */
public record ChangeAsked(List<OnDay> wishes, List<Swap> swaps, List<Spoiled> spoiled, Optional<Integer> days) {
    /** Nothing but what the logbook says by itself. */
    public static final ChangeAsked NOTHING = new ChangeAsked(List.of(), List.of(), List.of(), Optional.empty());

    public ChangeAsked {
        wishes = List.copyOf(wishes);
        swaps = List.copyOf(swaps);
        spoiled = List.copyOf(spoiled);
    }

    /**
     * A wish for a hole.
     *
     * @param day the day; empty: a spot that a hole is to have is of the first day, all else of every day
     */
    public record OnDay(Optional<LocalDate> day, HoleWish wish) {}

    /** A hole's spots of two days are exchanged. */
    public record Swap(String hole, LocalDate one, LocalDate other) {}

    /**
     * The spot of a hole is spoiled.
     *
     * @param day the day whose plan has the hole there; empty: the first
     */
    public record Spoiled(Optional<LocalDate> day, String hole) {}
}
