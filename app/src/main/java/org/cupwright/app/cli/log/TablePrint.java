package org.cupwright.app.cli.log;

import java.util.List;
import org.cupwright.app.answers.FactText;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.Shapes;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.NotReadPrint;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.entry.table.ImportTable;
import org.cupwright.app.texts.Texts;
import org.cupwright.cupchange.Fact;

/** What reads of a table of entries, as a page and as JSON. */
final class TablePrint {
    /** So many entries are shown; JSON has them all. Our choice. */
    private static final int SHOWN = 20;

    private final Task task;
    private final Texts texts;

    TablePrint(Task task) {
        this.task = task;
        this.texts = task.texts();
    }

    void read(ImportTable.Answer answer) {
        if (task.options().json()) {
            task.print(Json.document(new Shapes(texts).tree(answer)));
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
        entries(answer);
        if (!answer.unused().isEmpty()) {
            wrapped(texts.say("table.unused", String.join(", ", answer.unused())));
        }
        answer.remarks().forEach(remark -> wrapped(texts.say(remark)));
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

    private void wrapped(String text) {
        Layout.wrapped("", text).forEach(task::print);
    }
}
