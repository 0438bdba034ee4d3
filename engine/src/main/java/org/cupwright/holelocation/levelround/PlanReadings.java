package org.cupwright.holelocation.levelround;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.cupwright.green.Third;

/**
 * Readings for a coming plan: each goes where it adds most to the chance that a third has a position known to be good.
 *
 * <p>The poorest third is not looked after first: where it has no good position, it would take every reading of the
 * round.
 */
final class PlanReadings {
    /** A third is looked after again while its chance of a good position is below this (our choice). */
    private static final double CHANCE_ENOUGH = 0.98;

    /** A reading that adds less to a third's chance than this is better spent on the open ground (our choice). */
    private static final double LEAST_GAIN = 0.005;

    private final Map<Third, ThirdInNeed> thirds = new EnumMap<>(Third.class);

    PlanReadings(Map<Third, List<Integer>> positions, OpenGround ground, Chances chances, double aboutMetres) {
        positions.forEach(
                (third, numbers) -> thirds.put(third, new ThirdInNeed(numbers, ground, chances, aboutMetres)));
    }

    /** Numbers of the spots that are looked at. */
    int[] spots() {
        return thirds.values().stream()
                .flatMap(third -> third.positions().stream())
                .mapToInt(Integer::intValue)
                .toArray();
    }

    void choose(RoundSearch search, Choice choice) {
        Optional<Wanted> next = findNext(search, choice);
        while (next.isPresent() && !choice.isFull()) {
            choice.add(next.get().place(), Optional.of(next.get().third()));
            next = findNext(search, choice);
        }
    }

    /** The reading that helps a third, and by how much. */
    private record Wanted(Third third, PossibleReading place, double gain) {}

    /** The reading that adds most to the chance of a third that is not served yet. */
    private Optional<Wanted> findNext(RoundSearch search, Choice choice) {
        return thirds.entrySet().stream()
                .filter(entry -> entry.getValue().chance(search) < CHANCE_ENOUGH)
                .flatMap(entry -> wanted(entry.getKey(), entry.getValue(), search, choice).stream())
                .filter(wanted -> wanted.gain() >= LEAST_GAIN)
                .max(Comparator.comparingDouble(Wanted::gain));
    }

    private static Optional<Wanted> wanted(Third name, ThirdInNeed third, RoundSearch search, Choice choice) {
        ToDoubleFunction<PossibleReading> chance = place -> third.chanceWith(place, search);
        double before = third.chance(search);
        return search.findBest(third.places(search), choice.chosen(), chance)
                .map(place -> new Wanted(name, place, chance.applyAsDouble(place) - before));
    }
}
