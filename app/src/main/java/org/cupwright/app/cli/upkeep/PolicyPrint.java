package org.cupwright.app.cli.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.PolicyText;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.desk.policy.PolicyEntry;
import org.cupwright.app.texts.Texts;

/** Settings as a page. */
final class PolicyPrint {
    private static final int VALUE_WIDTH = 16;

    /** Lines of a terminal as it opens. */
    private static final int SCREEN = 24;

    private final Texts texts;
    private final PolicyText words;
    private final LocalDate day;

    PolicyPrint(Texts texts, LocalDate day) {
        this.texts = texts;
        this.words = new PolicyText(texts);
        this.day = day;
    }

    String page(List<PolicyEntry> entries) {
        List<String> lines = new ArrayList<>();
        lines.add(texts.say("policy.title", texts.day(day)));
        for (PolicyEntry entry : entries) {
            lines.add("");
            lines.addAll(lines(entry));
        }
        return String.join(System.lineSeparator(), lines);
    }

    /**
     * A line or two for each, as many as a screen holds: the value, what it is, the key by which it is set, and where
     * the value comes from.
     */
    String first(List<PolicyEntry> entries, int others) {
        List<String> lines = new ArrayList<>();
        lines.add(texts.say("policy.title", texts.day(day)));
        int shown = 0;
        for (List<String> block : entries.stream().map(this::block).toList()) {
            if (lines.size() + block.size() >= SCREEN) {
                break;
            }
            lines.addAll(block);
            shown++;
        }
        List<PolicyEntry> left = entries.subList(shown, entries.size());
        int own = (int) left.stream().filter(entry -> !entry.isDefault()).count();
        int more = others + left.size();
        lines.add(own == 0 ? texts.say("policy.others", more) : texts.say("policy.othersSet", more, own));
        return String.join(System.lineSeparator(), lines);
    }

    private List<String> block(PolicyEntry entry) {
        String head = Layout.left("  " + words.value(entry), VALUE_WIDTH);
        String says = words.says(entry) + " (" + entry.setting().key() + "; " + words.from(entry) + ")";
        List<String> block = Layout.wrapped(" ".repeat(VALUE_WIDTH), says);
        block.set(0, head + block.get(0).strip());
        return block;
    }

    private List<String> lines(PolicyEntry entry) {
        List<String> lines = new ArrayList<>();
        lines.add(Layout.left(entry.setting().key(), 36) + Layout.left(words.value(entry), 24) + words.standing(entry));
        lines.addAll(Layout.wrapped("    ", words.says(entry)));
        lines.addAll(Layout.wrapped("    ", words.accepts(entry)));
        lines.addAll(Layout.wrapped("    ", words.source(entry)));
        return lines;
    }
}
