package org.cupwright.holelocation.levelround;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.cupwright.green.surveyed.ReadingEffects;

/** Chooses readings one after the other, each for what it is expected to add to those before it. */
final class RoundSearch {
    /** More places than this are thinned out, evenly (our choice: keeps a large green within a second or two). */
    private static final int MOST_PLACES = 500;

    /** Readings stand so far apart at least, as spots do (our choice). */
    private static final double APART_METRES = 0.5;

    private final OpenGround ground;
    private final Chances chances;
    private final GradientSpread readingError;
    private final GradientSpread[] taken;
    private final List<PossibleReading> places;

    /** @param extra spots that must be among the places, however thin the choice */
    RoundSearch(OpenGround ground, Chances chances, ReadingEffects effects, double readingError, int[] extra) {
        this.ground = ground;
        this.chances = chances;
        this.readingError = new GradientSpread(readingError * readingError, 0, readingError * readingError);
        this.taken = new GradientSpread[ground.spots().size()];
        Arrays.fill(taken, new GradientSpread(0, 0, 0));
        this.places = IntStream.concat(undecidedPlaces(), Arrays.stream(extra))
                .distinct()
                .parallel()
                .mapToObj(spot -> new PossibleReading(spot, ground, effects))
                .toList();
    }

    private IntStream undecidedPlaces() {
        int[] open = IntStream.range(0, taken.length)
                .filter(spot -> ground.spot(spot).undecided() && ground.onChessboard(spot))
                .toArray();
        int every = 1 + (open.length - 1) / MOST_PLACES;
        return IntStream.range(0, open.length).filter(i -> i % every == 0).map(i -> open[i]);
    }

    List<PossibleReading> places() {
        return places;
    }

    GradientSpread taken(int spot) {
        return taken[spot];
    }

    OpenGround ground() {
        return ground;
    }

    /** K: the inverse of what a reading at a place would show about what is known. */
    private GradientSpread inverse(PossibleReading place) {
        return ground.spot(place.spot)
                .now()
                .less(taken[place.spot])
                .plus(readingError)
                .inverse();
    }

    /** What would be taken off a spot's covariance in all if a reading were taken at a place too. */
    GradientSpread takenWith(PossibleReading place, int spot) {
        return place.reaches(spot) ? taken[spot].plus(place.tie(spot).taken(inverse(place))) : taken[spot];
    }

    /** Ground that a reading at a place is expected to decide beside those already taken, m². */
    double expectedSquareMetres(PossibleReading place) {
        GradientSpread inverse = inverse(place);
        double sum = 0;
        for (int spot : place.near) {
            if (ground.spot(spot).undecided()) {
                OpenSpot open = ground.spot(spot);
                GradientSpread after = taken[spot].plus(place.tie(spot).taken(inverse));
                sum += chances.decided(open, after) - chances.decided(open, taken[spot]);
            }
        }
        return OpenGround.squareMetres() * sum;
    }

    /** The place, far enough from those chosen, that is expected to decide most. */
    Optional<PossibleReading> findNext(List<PossibleReading> chosen) {
        return findBest(places, chosen, this::expectedSquareMetres);
    }

    /** The place of the greatest worth, far enough from those chosen; the first of equals. */
    Optional<PossibleReading> findBest(
            List<PossibleReading> among, List<PossibleReading> chosen, ToDoubleFunction<PossibleReading> worth) {
        List<PossibleReading> free =
                among.stream().filter(place -> !tooNear(place, chosen)).toList();
        double[] worths = free.parallelStream().mapToDouble(worth).toArray();
        return IntStream.range(0, worths.length)
                .boxed()
                .max(Comparator.comparingDouble((Integer i) -> worths[i]).thenComparing(Comparator.reverseOrder()))
                .map(free::get);
    }

    private boolean tooNear(PossibleReading place, List<PossibleReading> chosen) {
        return chosen.stream()
                .anyMatch(other -> ground.spot(other.spot)
                                .at()
                                .distanceMetres(ground.spot(place.spot).at())
                        < APART_METRES);
    }

    void take(PossibleReading place) {
        GradientSpread inverse = inverse(place);
        for (int spot : place.near) {
            taken[spot] = taken[spot].plus(place.tie(spot).taken(inverse));
        }
        places.parallelStream().filter(other -> other != place).forEach(other -> other.after(place, inverse));
    }
}
