package org.cupwright.app.answers.json;

import java.util.UUID;
import org.cupwright.app.desk.entry.CorrectFact;
import org.cupwright.app.desk.entry.ListFacts;
import org.cupwright.app.desk.entry.RecordFact;
import org.cupwright.app.desk.entry.table.ImportTable;
import org.cupwright.app.texts.Texts;
import tools.jackson.databind.JsonNode;

/** Entries of the logbook as scripts read them. */
public final class LogJson {
    private final Shapes shapes;

    public LogJson(Texts texts) {
        this.shapes = new Shapes(texts);
    }

    public JsonNode kept(RecordFact.Answer answer) {
        return shapes.tree(new Shape()
                .with("course", answer.course().id())
                .with("kept", answer.facts())
                .with("remarks", answer.remarks()));
    }

    public JsonNode corrected(CorrectFact.Answer answer) {
        return shapes.tree(new Shape()
                .with("course", answer.course().id())
                .with("correction", answer.id())
                .with("was", answer.was())
                .with("now", answer.now())
                .with("remarks", answer.remarks()));
    }

    public JsonNode list(ListFacts.Answer answer) {
        return shapes.tree(new Shape()
                .with("course", answer.course().id())
                .with("from", answer.from())
                .with("to", answer.to())
                .with("facts", answer.facts())
                .with(
                        "corrected",
                        answer.corrected().keySet().stream().map(UUID::toString).sorted()));
    }

    /** What reads of a table of entries. */
    public JsonNode table(ImportTable.Answer answer) {
        return shapes.tree(new Shape()
                .with("course", answer.course().id())
                .with("added", answer.added().size())
                .with("known", answer.known())
                .with("kept", answer.kept())
                .with("facts", answer.added())
                .with("notRead", answer.notRead())
                .with("unused", answer.unused())
                .with("remarks", answer.remarks())
                .with("unended", answer.unended()));
    }
}
