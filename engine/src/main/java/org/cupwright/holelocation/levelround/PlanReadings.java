package org.cupwright.holelocation.levelround;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.green.Third;

/**
 * Readings for a coming plan: the third that is likeliest to end up without a position known to be good is looked after first, by
 * the reading that helps it most.
 */
final class PlanReadings {
    /** A third is looked after again while its chance of a good position is below this (our choice). */
    private static final double CHANCE_ENOUGH = 0.9;

    /** A reading that adds less to a third's chance than this is better spent on the open ground (our choice). */
    private static final double LEAST_GAIN = 0.01;

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
        Optional<Third> poorest = poorest(search);
        while (poorest.isPresent() && !choice.isFull()) {
            ThirdInNeed third = thirds.get(poorest.get());
            double before = third.chance(search);
            Optional<PossibleReading> best =
                    search.findBest(third.places(search), choice.chosen(), place -> third.chanceWith(place, search));
            double gain = best.map(place -> third.chanceWith(place, search)).orElse(0.0) - before;
            if (gain < LEAST_GAIN) {
                thirds.remove(poorest.get());
            } else {
                choice.add(best.orElseThrow(), poorest);
            }
            poorest = poorest(search);
        }
    }

    private Optional<Third> poorest(RoundSearch search) {
        Stream<Map.Entry<Third, ThirdInNeed>> inNeed =
                thirds.entrySet().stream().filter(entry -> entry.getValue().chance(search) < CHANCE_ENOUGH);
        return inNeed.min(Comparator.comparingDouble(entry -> entry.getValue().chance(search)))
                .map(Map.Entry::getKey);
    }
}
