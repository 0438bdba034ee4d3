package org.cupwright.holelocation.levelround;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.Third;

/** The readings chosen so far, and what each is expected to add. */
final class Choice {
    private final RoundSearch search;
    private final Optional<GreenFrame> frame;
    private final int most;
    private final IntConsumer told;
    private final List<PossibleReading> chosen = new ArrayList<>();
    private final List<RoundSpot> spots = new ArrayList<>();

    Choice(RoundSearch search, Optional<GreenFrame> frame, int most, IntConsumer told) {
        this.search = search;
        this.frame = frame;
        this.most = most;
        this.told = told;
    }

    boolean isFull() {
        return chosen.size() >= most;
    }

    List<PossibleReading> chosen() {
        return chosen;
    }

    void add(PossibleReading place, Optional<Third> third) {
        MapPoint at = search.ground().spot(place.spot).at();
        double expected = search.expectedSquareMetres(place);
        spots.add(new RoundSpot(at, frame.map(known -> known.place(at)), third, expected));
        chosen.add(place);
        search.take(place);
        told.accept(chosen.size());
    }

    LevelRound round() {
        double expected =
                spots.stream().mapToDouble(RoundSpot::expectedSquareMetres).sum();
        List<RoundSpot> walk = Walk.over(
                spots, point -> frame.map(known -> known.forwardMetres(point)).orElse(point.north()));
        return new LevelRound(walk, search.ground().undecidedSquareMetres(), expected);
    }
}
