package org.cupwright.app.cli.log;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.cupwright.app.answers.FactText;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.entry.CorrectFact;
import org.cupwright.app.desk.entry.ListFacts;
import org.cupwright.app.desk.entry.RecordFact;
import org.cupwright.app.storage.json.FactJson;
import org.cupwright.app.texts.Texts;
import org.cupwright.cupchange.Fact;
import org.cupwright.message.Message;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

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
            ObjectNode node = Json.object();
            node.put("course", answer.course().id());
            node.set(
                    "kept",
                    Json.array(answer.facts().stream().map(LogPrint::json).toList()));
            node.set("remarks", remarks(answer.remarks()));
            task.print(Json.document(node));
            return;
        }
        FactText words = new FactText(texts, answer.course(), answer.policy());
        answer.facts().forEach(fact -> row(texts.say("log.kept"), words, fact));
        answer.remarks().forEach(this::remark);
    }

    void corrected(CorrectFact.Answer answer) {
        if (task.options().json()) {
            ObjectNode node = Json.object();
            node.put("course", answer.course().id());
            node.put("correction", answer.id().toString());
            node.set("was", json(answer.was()));
            node.set("now", answer.now().map(LogPrint::json).orElse(null));
            node.set("remarks", remarks(answer.remarks()));
            task.print(Json.document(node));
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

    private ArrayNode remarks(List<Message> remarks) {
        return Json.texts(remarks.stream().map(texts::say).toList());
    }

    void list(ListFacts.Answer answer) {
        if (task.options().json()) {
            ObjectNode node = Json.object();
            node.put("course", answer.course().id());
            node.put("from", answer.from().toString());
            node.put("to", answer.to().toString());
            node.set(
                    "facts",
                    Json.array(answer.facts().stream().map(LogPrint::json).toList()));
            node.set(
                    "corrected",
                    Json.texts(answer.corrected().keySet().stream()
                            .map(UUID::toString)
                            .sorted()
                            .toList()));
            task.print(Json.document(node));
            return;
        }
        task.print(texts.say("log.title", answer.course().name(), texts.day(answer.from()), texts.day(answer.to())));
        FactText words = new FactText(texts, answer.course(), answer.policy());
        if (answer.facts().isEmpty()) {
            task.print(texts.say("log.none"));
        }
        for (Fact fact : answer.facts()) {
            String mark = answer.corrected().containsKey(fact.id()) ? " (" + texts.say("log.corrected") + ")" : "";
            lines("", words, fact, mark).forEach(task::print);
        }
    }

    private void row(String first, FactText words, Fact fact) {
        lines(Layout.left(first, 6), words, fact, "").forEach(task::print);
    }

    /** When, hole, id, then what it says and who says so, in lines that hang below each other. */
    private List<String> lines(String first, FactText words, Fact fact, String mark) {
        String head = first + words.moment(fact) + "  " + Layout.left(words.hole(fact), 4) + words.id(fact) + "  ";
        String said = words.says(fact) + " (" + fact.person() + ")" + mark;
        List<String> text = Layout.wrapped(" ".repeat(head.length()), said);
        List<String> lines = new ArrayList<>(text);
        lines.set(0, head + text.get(0).strip());
        return lines;
    }

    private static ObjectNode json(Fact fact) {
        return (ObjectNode) JsonMapper.shared().readTree(FactJson.write(fact));
    }
}
