package org.cupwright.app.office.green;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.answers.LevelRoundText;
import org.cupwright.app.answers.PositionText;
import org.cupwright.app.desk.level.LevelRoundOfDay;
import org.cupwright.app.office.work.WorkView;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.levelround.RoundSpot;

/** Where to lay the level on a green. */
record LevelView(Visit visit, LevelRoundOfDay.Answer answer) {
    /**
     * What stands on the page of where to lay the level: nothing as long as nobody asks, then one of the two.
     *
     * @param round the round
     * @param work how far it has come, as long as it is worked out
     * @param asks where the page asks again
     */
    record Shown(Optional<Round> round, Optional<WorkView.Page> work, String asks) {
        static final Shown NOTHING = new Shown(Optional.empty(), Optional.empty(), "");

        public boolean open() {
            return round.isPresent() || work.isPresent();
        }
    }

    /**
     * The round over the green.
     *
     * @param says what it is expected to decide
     * @param spots in the order of a walk
     */
    record Round(String says, List<Reading> spots) {
        List<MapPoint> places() {
            return spots.stream().map(Reading::place).toList();
        }
    }

    /**
     * A place to lay the level.
     *
     * @param at the place as it is given in addresses
     * @param where the place in words
     * @param says the way there, and what the reading is for
     */
    record Reading(MapPoint place, String at, String where, String says) {}

    Shown shown() {
        return new Shown(Optional.of(round()), Optional.empty(), "");
    }

    private Round round() {
        LevelRoundText words = new LevelRoundText(visit.texts(), answer);
        LevelRoundOfDay.GreenRound green = answer.greens().get(0);
        PositionText positions =
                new PositionText(visit.texts(), answer.day().policy().get(PlacePolicy.PACE_METRES));
        List<Reading> readings = new ArrayList<>();
        Optional<MapPoint> before = Optional.empty();
        for (RoundSpot spot : green.round().spots()) {
            readings.add(new Reading(
                    spot.at(),
                    AskedOfGreen.at(spot.at()),
                    positions.of(spot.place(), spot.at()),
                    String.join(" · ", words.walkAndUse(spot, before))));
            before = Optional.of(spot.at());
        }
        return new Round(words.expected(green), readings);
    }
}
