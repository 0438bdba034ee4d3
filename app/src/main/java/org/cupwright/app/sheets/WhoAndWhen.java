package org.cupwright.app.sheets;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.app.desk.round.RoundOfDay;
import org.cupwright.app.texts.Texts;

/** Who cuts a hole and by when, where there is anything to say of it. */
public record WhoAndWhen(Optional<RoundOfDay> round, Texts texts) {
    public static WhoAndWhen of(DaySheet day, Texts texts) {
        return new WhoAndWhen(day.round(), texts);
    }

    /** Who has a hole; that nobody has, where others have somebody. */
    public Optional<String> who(SheetHole hole) {
        return round.flatMap(of -> of.shares()
                .who(hole.hole())
                .or(() -> Optional.of(texts.say("roundOf.nobodys"))
                        .filter(nobody -> of.nobodys().contains(hole.hole()))));
    }

    /** By when it is to be ready; of a hole that stays there is no such time. */
    public Optional<String> cutBy(SheetHole hole) {
        return round.filter(of -> !hole.stays())
                .flatMap(of -> of.cutBy(hole.hole()))
                .map(time -> texts.say("roundOf.cutBy", time.toString()));
    }

    /** Both in one line. */
    public Optional<String> line(SheetHole hole) {
        List<String> said =
                Stream.of(who(hole), cutBy(hole)).flatMap(Optional::stream).toList();
        return said.isEmpty() ? Optional.empty() : Optional.of(String.join(" · ", said));
    }
}
