package org.cupwright.holelocation.levelround;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** A third of a green without a position known to be good, and the chance that readings give it one. */
final class ThirdInNeed {
    /** The most positions, the most level first, that are looked at closely (our choice). */
    private static final int MOST_POSITIONS = 60;

    /** Positions so far apart pass or fail by themselves (our choice: twice what a reading tells half of). */
    private static final double BY_THEMSELVES_METRES = 1.5;

    private final List<Integer> positions;
    private final OpenGround ground;
    private final Chances chances;
    /** For each position the spots with which it is judged. */
    private final List<int[]> about;

    ThirdInNeed(List<Integer> undecided, OpenGround ground, Chances chances, double aboutMetres) {
        this.ground = ground;
        this.chances = chances;
        this.positions = undecided.stream()
                .sorted(Comparator.comparingDouble(number -> ground.spot(number).slopePercent()))
                .limit(MOST_POSITIONS)
                .toList();
        this.about = positions.stream()
                .map(number -> ground.within(ground.spot(number).at(), aboutMetres))
                .toList();
    }

    List<Integer> positions() {
        return positions;
    }

    List<PossibleReading> places(RoundSearch search) {
        Set<Integer> wanted = new HashSet<>(positions);
        return search.places().stream()
                .filter(place -> wanted.contains(place.spot))
                .toList();
    }

    /** The chance of a position known to be good by the readings taken so far. */
    double chance(RoundSearch search) {
        return chance(search::taken);
    }

    /** The chance with a reading at one more place. */
    double chanceWith(PossibleReading place, RoundSearch search) {
        return chance(spot -> search.takenWith(place, spot));
    }

    private double chance(IntFunction<GradientSpread> taken) {
        double[] passes =
                about.stream().mapToDouble(spots -> passes(spots, taken)).toArray();
        List<Integer> bestFirst = IntStream.range(0, passes.length)
                .boxed()
                .filter(i -> passes[i] > 0)
                .sorted(Comparator.comparingDouble(i -> -passes[i]))
                .toList();
        double none = 1;
        List<Integer> counted = new ArrayList<>();
        for (int i : bestFirst) {
            if (counted.stream().allMatch(other -> apart(i, other))) {
                counted.add(i);
                none *= 1 - passes[i];
            }
        }
        return 1 - none;
    }

    /** A position passes when its worst spot does; spots about it go together. */
    private double passes(int[] spots, IntFunction<GradientSpread> taken) {
        double worst = 1;
        for (int spot : spots) {
            worst = Math.min(worst, chances.passes(ground.spot(spot), taken.apply(spot)));
        }
        return worst;
    }

    private boolean apart(int one, int other) {
        return ground.spot(positions.get(one))
                        .at()
                        .distanceMetres(ground.spot(positions.get(other)).at())
                >= BY_THEMSELVES_METRES;
    }
}
