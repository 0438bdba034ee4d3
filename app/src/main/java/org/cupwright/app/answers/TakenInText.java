package org.cupwright.app.answers;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cupwright.app.answers.Line.Cell;
import org.cupwright.app.desk.entry.carried.TakeRound;
import org.cupwright.app.desk.entry.notebook.DayOrder;
import org.cupwright.app.desk.entry.notebook.ImportHistory;
import org.cupwright.app.desk.entry.table.ImportTable;
import org.cupwright.app.desk.log.FactLines;
import org.cupwright.app.desk.weather.ImportWeather;
import org.cupwright.app.texts.Texts;
import org.cupwright.cupchange.Fact;
import org.cupwright.formats.table.NotReadLine;
import org.cupwright.formats.table.Question;
import org.cupwright.policy.EnumNames;

/** What reads of a file that goes into the logbook, in words: entries, a notebook, weather. */
public record TakenInText(Texts texts, Lines lines) {
    /** So many entries, and so many lines that do not read, are shown; JSON has them all. Our choice. */
    private static final int SHOWN = 20;

    public TakenInText(Texts texts) {
        this(texts, new Lines(texts));
    }

    /** Entries as they were written out. */
    public Lines entries(FactLines.Imported done) {
        return lines.say(done.kept() ? "log.imported" : "log.wouldBeKept", done.added(), done.known());
    }

    /** What a telephone could not send. */
    public Lines round(TakeRound.Taken taken) {
        lines.say("log.imported", taken.added(), taken.known());
        taken.notTaken()
                .forEach(one -> sentence("log.notTaken", one.hole(), texts.say(one.why()), texts.say(one.tryThis())));
        return lines;
    }

    public Lines table(ImportTable.Answer answer) {
        int added = answer.added();
        int read = added + answer.known();
        int all = read + answer.notRead().size();
        String course = answer.course().name();
        if (all == 0) {
            lines.say("table.noLines", course);
        } else {
            lines.say("table.reads", course, read, all, added, answer.known());
        }
        order(answer.order());
        facts(answer);
        if (!answer.unused().isEmpty()) {
            sentence("table.unused", String.join(", ", answer.unused()));
        }
        answer.remarks().forEach(remark -> lines.wrapped("", texts.say(remark)));
        notRead(answer.notRead());
        answer.unended().ifPresent(line -> sentence("table.unended", line));
        return kept(answer.kept(), added, answer.known());
    }

    private void facts(ImportTable.Answer answer) {
        FactText words = new FactText(texts, answer.course(), answer.policy());
        List<Fact> facts = answer.facts();
        for (Fact fact : facts.subList(0, Math.min(SHOWN, facts.size()))) {
            lines.wrapped(
                    List.of(new Cell("  " + words.moment(fact) + "  ", 0), Line.left(words.hole(fact), 4)),
                    words.told(fact));
        }
        if (facts.size() > SHOWN) {
            lines.line("  " + texts.say("table.more", facts.size() - SHOWN));
        }
    }

    public Lines notebook(ImportHistory.Answer answer) {
        lines.say("history.reads", answer.course().name(), answer.read(), day(answer.first()), day(answer.last()));
        order(answer.order());
        if (answer.roughly() > 0) {
            sentence("history.roughly", answer.roughly());
        }
        notRead(answer.notRead());
        answer.unended().ifPresent(line -> lines.say("table.unended", line));
        return kept(answer.kept(), answer.added(), answer.known());
    }

    public Lines weather(ImportWeather.Answer answer) {
        boolean forecast = answer.forecast();
        sentence(
                forecast ? "weather.forecastReads" : "weather.reads",
                answer.course().name(),
                answer.read(),
                day(answer.first()),
                day(answer.last()));
        String units = answer.units().entrySet().stream()
                .map(unit -> unit.getKey() + " " + unit.getValue())
                .collect(Collectors.joining(", "));
        sentence("weather.units", units);
        if (answer.missing() > 0) {
            sentence(forecast ? "weather.forecastMissing" : "weather.missing", answer.missing());
        }
        if (answer.noRain() > 0 && !forecast) {
            sentence("weather.noRain", answer.noRain());
        }
        notRead(answer.notRead());
        answer.unended().ifPresent(line -> sentence("table.unended", line));
        String kept = forecast ? "weather.forecastKept" : "weather.kept";
        String would = forecast ? "weather.forecastWouldKeep" : "weather.wouldKeep";
        sentence(answer.kept() ? kept : would, answer.added(), answer.changed(), answer.known());
        asks(answer.asks());
        if (!answer.kept()) {
            sentence("history.dryRun");
        }
        return lines;
    }

    private void asks(List<Question> questions) {
        if (!questions.isEmpty()) {
            lines.say("weather.asks");
        }
        questions.forEach(
                question -> lines.wrapped("  ", texts.say(question.asks()) + " " + texts.say(question.tryThis())));
    }

    private Lines kept(boolean kept, int added, int known) {
        return kept ? lines.say("log.imported", added, known) : lines.say("history.dryRun");
    }

    private void order(Optional<DayOrder> order) {
        order.ifPresent(found -> lines.say("history.order." + EnumNames.lowerCamel(found)));
    }

    private String day(Optional<LocalDate> day) {
        return day.map(texts::day).orElse("–");
    }

    private void sentence(String key, Object... plain) {
        lines.wrapped("", texts.say(key, plain));
    }

    /** The lines of a table that do not read, each with its reason. */
    private void notRead(List<NotReadLine> notRead) {
        if (!notRead.isEmpty()) {
            lines.say("history.notRead", notRead.size());
        }
        for (NotReadLine line : notRead.subList(0, Math.min(SHOWN, notRead.size()))) {
            String why = texts.say(line.why());
            lines.wrapped("  ", texts.say("history.line", line.number(), why, texts.say(line.tryThis())));
        }
        if (notRead.size() > SHOWN) {
            lines.line("  " + texts.say("history.more", notRead.size() - SHOWN));
        }
    }
}
