package org.cupwright.holelocation.levelround;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cupwright.green.Third;

/**
 * Readings for a coming plan: the third that is likeliest to end up without a position known to be good is looked after first, by
 * the position of it that is likeliest to pass once it is read.
 */
final class PlanReadings {
    /** A third is looked after again while its chance of a good position is below this (our choice). */
    private static final double CHANCE_ENOUGH = 0.9;

    /** A position less likely than this to pass is not worth walking to (our choice). */
    private static final double CHANCE_WORTH_A_READING = 0.01;

    /** The most positions of a third, the most level first, that are looked at closely (our choice). */
    private static final int MOST_CANDIDATES = 40;

    private final ThirdsInNeed thirds;
    private final Chances chances;
    private final Map<Third, Set<Integer>> candidates = new EnumMap<>(Third.class);
    /** The chance that a third gets no position known to be good, by the readings chosen so far. */
    private final Map<Third, Double> without = new EnumMap<>(Third.class);

    PlanReadings(ThirdsInNeed thirds, OpenGround ground, Chances chances) {
        this.thirds = thirds;
        this.chances = chances;
        for (Third third : thirds.thirds()) {
            List<Integer> mostLevel = thirds.candidates(third).stream()
                    .filter(ground::onChessboard)
                    .sorted(Comparator.comparingDouble(
                            number -> ground.spot(number).slopePercent()))
                    .limit(MOST_CANDIDATES)
                    .toList();
            candidates.put(third, new HashSet<>(mostLevel));
            without.put(third, 1.0);
        }
    }

    /** Numbers of the spots that are looked at. */
    int[] spots() {
        return candidates.values().stream()
                .flatMap(Set::stream)
                .mapToInt(Integer::intValue)
                .sorted()
                .toArray();
    }

    void choose(RoundSearch search, Choice choice) {
        Optional<Third> poorest = poorest();
        while (poorest.isPresent() && !choice.isFull()) {
            addFor(poorest.get(), search, choice);
            poorest = poorest();
        }
    }

    private Optional<Third> poorest() {
        return without.entrySet().stream()
                .filter(entry -> entry.getValue() > 1 - CHANCE_ENOUGH)
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey);
    }

    private void addFor(Third third, RoundSearch search, Choice choice) {
        List<PossibleReading> among = search.places().stream()
                .filter(place -> candidates.get(third).contains(place.spot))
                .toList();
        Optional<PossibleReading> best =
                search.findBest(among, choice.chosen(), place -> thirds.chance(place, search, chances));
        double chance = best.map(place -> thirds.chance(place, search, chances)).orElse(0.0);
        if (chance < CHANCE_WORTH_A_READING) {
            without.remove(third);
            return;
        }
        choice.add(best.orElseThrow(), Optional.of(third));
        without.merge(third, 1 - chance, (before, more) -> before * more);
    }
}
