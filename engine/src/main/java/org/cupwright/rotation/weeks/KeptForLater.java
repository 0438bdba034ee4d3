package org.cupwright.rotation.weeks;

import java.util.Optional;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Translated;
import org.cupwright.policy.EnumNames;
import org.cupwright.rotation.candidate.Candidate;

/** Whether a spot was a better choice for a day and was left, because a later day has its hole there or near it. */
final class KeptForLater {
    /** Less than this, in thousandths of a point, is no better choice: our choice, a metre of room about the spot. */
    private static final long BETTER_BY = 5000;

    private final WeeksModel model;
    private final Choices choices;

    KeptForLater(WeeksModel model, Choices choices) {
        this.model = model;
        this.choices = choices;
    }

    private record Better(int spot, int until) {}

    /** The reason, of the best such spot; empty where there is none, or somebody fixed the hole. */
    Optional<Message> reason(int green, int day) {
        return model.table(green).fixed(day)
                ? Optional.empty()
                : best(green, day).map(better -> told(green, better));
    }

    private Optional<Better> best(int green, int day) {
        GreenTable table = model.table(green);
        long least = choices.ofDay(green, day, choices.chosen(green, day)) - BETTER_BY;
        Optional<Better> best = Optional.empty();
        for (int spot : table.offered(day)) {
            long cost = choices.ofDay(green, day, spot);
            if (cost < least) {
                Optional<Better> better = keptUntil(green, day, spot);
                if (better.isPresent()) {
                    least = cost;
                    best = better;
                }
            }
        }
        return best;
    }

    /** The first later day whose hole a hole at that spot would keep from its ground. */
    private Optional<Better> keptUntil(int green, int day, int spot) {
        int until = Integer.MAX_VALUE;
        for (int source : model.sharing(green)) {
            GreenTable table = model.table(source);
            int last = model.green(green).restsUntil(day);
            for (int later = model.table(green).stays().end(day); later <= last; later++) {
                int hole = choices.chosen(source, later);
                boolean near = hole != GreenTable.NONE
                        && table.cut(later)
                        && model.table(green).at(spot).distanceMetres(table.at(hole)) < model.restMetres();
                until = near ? Math.min(until, later) : until;
            }
        }
        return until == Integer.MAX_VALUE ? Optional.empty() : Optional.of(new Better(spot, until));
    }

    private Message told(int green, Better better) {
        Candidate spot = model.table(green).spot(better.spot);
        Day day = new Day(model.calendar().date(better.until));
        return spot.third()
                .flatMap(third -> spot.lateral()
                        .map(lateral -> Message.of(
                                "rotation.reason.keptForAt",
                                new Translated("third." + EnumNames.lowerCamel(third)),
                                new Translated("lateral." + EnumNames.lowerCamel(lateral)),
                                day)))
                .orElseGet(() -> Message.of("rotation.reason.keptFor", day));
    }
}
