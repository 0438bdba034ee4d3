package org.cupwright.app.cli.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.desk.policy.PolicyEntry;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;
import org.cupwright.policy.Setting;
import tools.jackson.databind.node.ObjectNode;

/** Settings as a page and as JSON. */
final class PolicyPrint {
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

    private List<String> lines(PolicyEntry entry) {
        Setting<?> setting = entry.setting();
        List<String> lines = new ArrayList<>();
        String own = entry.isDefault()
                ? texts.say("policy.isDefault")
                : texts.say("policy.isSet", withUnit(entry.defaultText(), setting));
        lines.add(Layout.left(setting.key(), 36) + Layout.left(withUnit(entry.value(), setting), 24) + own);
        lines.addAll(Layout.wrapped("    ", texts.say(setting.sentenceKey())));
        lines.addAll(Layout.wrapped(
                "    ", texts.say("policy.accepts", setting.type().accepts())));
        lines.addAll(Layout.wrapped("    ", mark(setting) + ": " + setting.source() + "."));
        return lines;
    }

    ObjectNode json(List<PolicyEntry> entries) {
        ObjectNode document = Json.object();
        document.put("date", day.toString());
        document.set("settings", Json.array(entries.stream().map(this::json).toList()));
        return document;
    }

    private ObjectNode json(PolicyEntry entry) {
        Setting<?> setting = entry.setting();
        ObjectNode node = Json.object();
        node.put("key", setting.key());
        node.put("value", entry.value());
        node.put("unit", setting.unit());
        node.put("range", setting.type().accepts());
        node.put("default", entry.defaultText());
        node.put("isDefault", entry.isDefault());
        node.put("mark", EnumNames.lowerCamel(setting.sourceKind()));
        node.put("source", setting.source());
        node.put("says", texts.say(setting.sentenceKey()));
        return node;
    }

    private String mark(Setting<?> setting) {
        return texts.say("mark." + EnumNames.lowerCamel(setting.sourceKind()));
    }

    private static String withUnit(String value, Setting<?> setting) {
        String shown = value.isEmpty() ? "–" : value;
        return setting.unit().isEmpty() ? shown : shown + " " + setting.unit();
    }
}
