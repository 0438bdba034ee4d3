package org.cupwright.app.answers.json;

import java.time.LocalTime;
import java.util.List;
import org.cupwright.app.desk.round.RoundOfDay;
import org.cupwright.app.storage.DayRound;

/** The round of a day as scripts read it: its holes in the order in which they are gone to. */
public final class RoundJson {
    private RoundJson() {}

    public static Shape of(RoundOfDay round) {
        List<Shape> holes = round.parts().stream()
                .flatMap(part -> part.holes().stream())
                .map(hole -> new Shape()
                        .with("hole", hole)
                        .with("person", round.shares().who(hole))
                        .with("cutBy", round.cutBy(hole).map(LocalTime::toString)))
                .toList();
        return new Shape()
                .with("course", round.course())
                .with("date", round.date().toString())
                .with("saidBy", round.said().map(DayRound::person))
                .with(
                        "start",
                        new Shape()
                                .with("type", round.start().type())
                                .with(
                                        "firstGroups",
                                        round.start().firstGroups().stream()
                                                .map(LocalTime::toString)
                                                .toList())
                                .with("frostMinutes", round.start().frostMinutes())
                                .with(
                                        "usual",
                                        round.said().flatMap(DayRound::start).isEmpty()))
                .with("holes", holes)
                .with(
                        "people",
                        round.shares().all().stream()
                                .map(share -> new Shape()
                                        .with("person", share.person())
                                        .with("holes", share.holes()))
                                .toList())
                .with("nobody", round.nobodys());
    }
}
