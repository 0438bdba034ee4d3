package org.cupwright.app.cli.log;

import java.util.List;
import org.cupwright.app.answers.FactText;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.Shapes;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.entry.CorrectFact;
import org.cupwright.app.desk.entry.ListFacts;
import org.cupwright.app.desk.entry.RecordFact;
import org.cupwright.app.texts.Texts;
import org.cupwright.cupchange.Fact;
import org.cupwright.message.Message;

/** The logbook as a table and as JSON. */
final class LogPrint {
    private final Task task;
    private final Texts texts;

    LogPrint(Task task) {
        this.task = task;
        this.texts = task.texts();
    }

    void kept(RecordFact.Answer answer) {
        if (task.options().json()) {
            task.print(Json.document(new Shapes(texts).tree(answer)));
            return;
        }
        FactText words = new FactText(texts, answer.course(), answer.policy());
        answer.kept().forEach(fact -> row(texts.say("log.kept"), words, fact));
        answer.remarks().forEach(this::remark);
    }

    void corrected(CorrectFact.Answer answer) {
        if (task.options().json()) {
            task.print(Json.document(new Shapes(texts).tree(answer)));
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
        Layout.wrapped("", texts.say(remark)).forEach(task::print);
    }

    void list(ListFacts.Answer answer) {
        if (task.options().json()) {
            task.print(Json.document(new Shapes(texts).tree(answer)));
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
}
