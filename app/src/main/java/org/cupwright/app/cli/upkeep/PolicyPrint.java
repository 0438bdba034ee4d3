package org.cupwright.app.cli.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.desk.policy.PolicyEntry;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;
import org.cupwright.policy.Setting;

/** Settings as a page. */
final class PolicyPrint {
    private static final int VALUE_WIDTH = 16;

    /** Lines of a terminal as it opens. */
    private static final int SCREEN = 24;

    private final Texts texts;
    private final LocalDate day;

    PolicyPrint(Texts texts, LocalDate day) {
        this.texts = texts;
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
        Setting<?> setting = entry.setting();
        String from = entry.isDefault()
                ? texts.say("policy.from." + EnumNames.lowerCamel(setting.sourceKind()))
                : texts.say("policy.isSet", withUnit(entry.defaultText(), setting));
        String head = Layout.left("  " + withUnit(entry.value(), setting), VALUE_WIDTH);
        String says = texts.say(setting.sentenceKey()) + " (" + setting.key() + "; " + from + ")";
        List<String> block = Layout.wrapped(" ".repeat(VALUE_WIDTH), says);
        block.set(0, head + block.get(0).strip());
        return block;
    }

    private List<String> lines(PolicyEntry entry) {
        Setting<?> setting = entry.setting();
        List<String> lines = new ArrayList<>();
        String own = entry.isDefault()
                ? texts.say("policy.isDefault")
                : texts.say("policy.isSet", withUnit(entry.defaultText(), setting));
        lines.add(Layout.left(setting.key(), 36) + Layout.left(withUnit(entry.value(), setting), 24) + own);
        lines.addAll(Layout.wrapped("    ", texts.say(setting.sentenceKey())));
        lines.addAll(Layout.wrapped(
                "    ", texts.say("policy.accepts", texts.say(setting.type().accepts()))));
        lines.addAll(Layout.wrapped("    ", mark(setting) + ": " + setting.source() + "."));
        return lines;
    }

    private String mark(Setting<?> setting) {
        return texts.say("mark." + EnumNames.lowerCamel(setting.sourceKind()));
    }

    private String withUnit(String value, Setting<?> setting) {
        String shown = value.isEmpty() ? "–" : value;
        return setting.unit().isEmpty() ? shown : shown + " " + texts.say(setting.unitKey());
    }
}
