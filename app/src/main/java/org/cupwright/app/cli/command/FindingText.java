package org.cupwright.app.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.texts.Texts;
import org.cupwright.finding.Finding;
import org.cupwright.message.Amount;
import tools.jackson.databind.node.ObjectNode;

/** One finding as a point of a list and as JSON, wherever findings are shown. */
public final class FindingText {
    private final Texts texts;

    public FindingText(Texts texts) {
        this.texts = texts;
    }

    /** What was found and where, after a mark that takes four columns. */
    public List<String> says(String mark, Finding finding, Optional<String> where) {
        String place = where.map(text -> " (" + text + ")").orElse("");
        List<String> text = Layout.wrapped("    ", texts.say(finding.says()) + place);
        List<String> lines = new ArrayList<>();
        lines.add(Layout.left(mark, 3) + text.get(0).strip());
        lines.addAll(text.subList(1, text.size()));
        return lines;
    }

    /** What to try. */
    public List<String> tryThis(Finding finding) {
        return Layout.wrapped("    ", texts.say(finding.tryThis()));
    }

    public ObjectNode json(Finding finding, String where) {
        ObjectNode node = Json.object();
        node.put("kind", finding.kind().jsonName());
        node.put("where", where);
        node.put("value", texts.show(finding.value()));
        Optional<Amount> amount = Amount.of(finding.value());
        node.set("amount", Json.number(amount.map(Amount::number).orElse(Double.NaN)));
        node.set("unit", Json.text(amount.map(Amount::unit).filter(unit -> !unit.isEmpty())));
        node.put("tryThis", texts.say(finding.tryThis()));
        node.put("says", texts.say(finding.says()));
        return node;
    }
}
