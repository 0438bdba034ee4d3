package org.cupwright.app.answers;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.Line.Cell;
import org.cupwright.app.desk.entry.CorrectFact;
import org.cupwright.app.desk.entry.ListFacts;
import org.cupwright.app.desk.entry.RecordFact;
import org.cupwright.app.texts.Texts;
import org.cupwright.cupchange.Fact;
import org.cupwright.message.Message;

/** What goes into the logbook and what is in it, in words. */
public record LogText(Texts texts, Lines lines) {
    public LogText(Texts texts) {
        this(texts, new Lines(texts));
    }

    public Lines kept(RecordFact.Answer answer) {
        FactText words = new FactText(texts, answer.course(), answer.policy());
        answer.kept().forEach(fact -> row("log.kept", words, fact));
        return remarks(answer.remarks());
    }

    public Lines corrected(CorrectFact.Answer answer) {
        FactText words = new FactText(texts, answer.course(), answer.policy());
        row("log.was", words, answer.was());
        answer.now().ifPresentOrElse(now -> row("log.now", words, now), () -> lines.say("log.withdrawn"));
        return remarks(answer.remarks());
    }

    private Lines remarks(List<Message> remarks) {
        remarks.forEach(remark -> lines.wrapped("", texts.say(remark)));
        return lines;
    }

    public Lines list(ListFacts.Answer answer) {
        lines.say("log.title", answer.course().name(), texts.day(answer.from()), texts.day(answer.to()));
        FactText words = new FactText(texts, answer.course(), answer.policy());
        if (answer.facts().isEmpty()) {
            lines.say("log.none");
        }
        for (Fact fact : answer.facts()) {
            boolean corrected = answer.corrected().contains(fact.id());
            String mark = corrected ? " (" + texts.say("log.corrected") + ")" : "";
            String clocks = words.clocks(fact).map(said -> " · " + said).orElse("");
            lines.wrapped(head(words, fact), words.told(fact) + mark + clocks);
        }
        return lines;
    }

    private void row(String key, FactText words, Fact fact) {
        List<Cell> cells = new ArrayList<>(List.of(Line.left(texts.say(key), 6)));
        cells.addAll(head(words, fact));
        lines.wrapped(cells, words.told(fact));
    }

    /** When, hole and id, below which hangs what it says and who says so. */
    private static List<Cell> head(FactText words, Fact fact) {
        return List.of(
                new Cell(words.moment(fact) + "  ", 0),
                Line.left(words.hole(fact), 4),
                new Cell(words.id(fact) + "  ", 0));
    }
}
