package org.cupwright.app.answers;

import java.time.LocalTime;
import java.util.List;
import org.cupwright.app.desk.round.RoundOfDay;
import org.cupwright.app.texts.Texts;

/** The round of a day in words. */
public record RoundText(Texts texts) {
    public Lines lines(RoundOfDay round) {
        Lines lines = new Lines(texts);
        lines.wrapped("", texts.say("roundOf.title", round.course().name(), texts.day(round.date())));
        says(round).forEach(says -> lines.wrapped("", says));
        lines.gap();
        round.parts().stream().flatMap(part -> part.holes().stream()).forEach(hole -> row(hole, round, lines));
        return lines;
    }

    /** What there is to tell of it; that there is nothing, where there is not. */
    private List<String> says(RoundOfDay round) {
        return round.tells() ? round.says().stream().map(texts::say).toList() : List.of(texts.say("roundOf.nothing"));
    }

    private void row(String hole, RoundOfDay round, Lines lines) {
        String by = round.cutBy(hole)
                .map(LocalTime::toString)
                .map(time -> texts.say("roundOf.cutBy", time))
                .orElse("");
        String who = round.shares()
                .who(hole)
                .orElseGet(() -> round.nobodys().contains(hole) ? texts.say("roundOf.nobodys") : "");
        String said = (by + "  " + who).strip();
        if (!said.isEmpty()) {
            lines.wrapped(List.of(Line.left("  " + hole, 6)), said);
        }
    }
}
