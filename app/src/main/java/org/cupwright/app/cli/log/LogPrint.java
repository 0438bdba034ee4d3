package org.cupwright.app.cli.log;

import java.util.List;
import org.cupwright.app.answers.FactText;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.Shapes;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.NotReadPrint;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.entry.CorrectFact;
import org.cupwright.app.desk.entry.ListFacts;
import org.cupwright.app.desk.entry.RecordFact;
import org.cupwright.app.desk.entry.table.ImportTable;
import org.cupwright.app.texts.Texts;
import org.cupwright.cupchange.Fact;
import org.cupwright.message.Message;
import org.cupwright.policy.EnumNames;

/** The logbook as a table and as JSON. */
final class LogPrint {
    /** So many entries of a table are shown; JSON has them all. Our choice. */
    private static final int SHOWN = 20;

    private final Task task;
    private final Texts texts;

    LogPrint(Task task) {
        this.task = task;
        this.texts = task.texts();
    }

    /** Prints an answer as JSON, where that is wanted. */
    boolean isJson(Object answer) {
        if (task.options().json()) {
            task.print(Json.document(new Shapes(texts).tree(answer)));
        }
        return task.options().json();
    }

    void kept(RecordFact.Answer answer) {
        if (isJson(answer)) {
            return;
        }
        FactText words = new FactText(texts, answer.course(), answer.policy());
        answer.kept().forEach(fact -> row(texts.say("log.kept"), words, fact));
        answer.remarks().forEach(this::remark);
    }

    void corrected(CorrectFact.Answer answer) {
        if (isJson(answer)) {
            return;
        }
        FactText words = new FactText(texts, answer.course(), answer.policy());
        row(texts.say("log.was"), words, answer.was());
        answer.now()
                .ifPresentOrElse(
                        now -> row(texts.say("log.now"), words, now), () -> task.print(texts.say("log.withdrawn")));
        answer.remarks().forEach(this::remark);
    }

    private void remark(Message remark) {
        wrapped(texts.say(remark));
    }

    private void wrapped(String text) {
        Layout.wrapped("", text).forEach(task::print);
    }

    void list(ListFacts.Answer answer) {
        if (isJson(answer)) {
            return;
        }
        task.print(texts.say("log.title", answer.course().name(), texts.day(answer.from()), texts.day(answer.to())));
        FactText words = new FactText(texts, answer.course(), answer.policy());
        if (answer.facts().isEmpty()) {
            task.print(texts.say("log.none"));
        }
        for (Fact fact : answer.facts()) {
            String mark = answer.corrected().contains(fact.id()) ? " (" + texts.say("log.corrected") + ")" : "";
            lines("", words, fact, mark).forEach(task::print);
        }
    }

    private void row(String first, FactText words, Fact fact) {
        lines(Layout.left(first, 6), words, fact, "").forEach(task::print);
    }

    /** When, hole, id, then what it says and who says so, in lines that hang below each other. */
    private List<String> lines(String first, FactText words, Fact fact, String mark) {
        String head = first + words.moment(fact) + "  " + Layout.left(words.hole(fact), 4) + words.id(fact) + "  ";
        return Layout.hanging(head, words.told(fact) + mark);
    }

    /** What reads of a table of entries. */
    void table(ImportTable.Answer answer) {
        if (isJson(answer)) {
            return;
        }
        int added = answer.added();
        int read = added + answer.known();
        int lines = read + answer.notRead().size();
        String course = answer.course().name();
        task.print(
                lines == 0
                        ? texts.say("table.noLines", course)
                        : texts.say("table.reads", course, read, lines, added, answer.known()));
        answer.order().ifPresent(order -> task.print(texts.say("history.order." + EnumNames.lowerCamel(order))));
        entries(answer);
        if (!answer.unused().isEmpty()) {
            wrapped(texts.say("table.unused", String.join(", ", answer.unused())));
        }
        answer.remarks().forEach(this::remark);
        NotReadPrint.print(task, answer.notRead());
        answer.unended().ifPresent(line -> wrapped(texts.say("table.unended", line)));
        task.print(answer.kept() ? texts.say("log.imported", added, answer.known()) : texts.say("history.dryRun"));
    }

    private void entries(ImportTable.Answer answer) {
        FactText words = new FactText(texts, answer.course(), answer.policy());
        List<Fact> facts = answer.facts();
        for (Fact fact : facts.subList(0, Math.min(SHOWN, facts.size()))) {
            String head = "  " + words.moment(fact) + "  " + Layout.left(words.hole(fact), 4);
            Layout.hanging(head, words.told(fact)).forEach(task::print);
        }
        if (facts.size() > SHOWN) {
            task.print("  " + texts.say("table.more", facts.size() - SHOWN));
        }
    }
}
