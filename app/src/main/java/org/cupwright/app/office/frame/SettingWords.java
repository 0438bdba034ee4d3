package org.cupwright.app.office.frame;

import java.util.List;
import org.cupwright.app.answers.PolicyText;
import org.cupwright.app.desk.policy.DeskPolicy;
import org.cupwright.app.desk.policy.PolicyEntry;
import org.cupwright.app.texts.Texts;
import org.cupwright.message.Message;

/** Values of settings as pages have them: where a setting is one of a few things, those in words. */
public record SettingWords(Texts texts) {
    /** One of a few: as it is kept, and in words. */
    public record Choice(String value, String says) {}

    /** What it may be; empty where it is typed. */
    public List<Choice> choices(PolicyEntry entry) {
        if (entry.setting() == DeskPolicy.LANGUAGE) {
            return DeskPolicy.LANGUAGES.stream()
                    .map(value -> new Choice(value, texts.say("begin.language." + value)))
                    .toList();
        }
        Message accepts = entry.setting().type().accepts();
        List<String> values = switch (accepts.key()) {
            case "accepts.yesNo" -> List.of("yes", "no");
            case "accepts.oneOf" ->
                List.of(((Message.Name) accepts.arguments().get(0)).text().split(", "));
            default -> List.of();
        };
        return values.stream()
                .map(value -> new Choice(value, texts.say("course.choice." + value)))
                .toList();
    }

    /** A value as it is read: one of a few in words, any other with its unit. */
    public String shown(PolicyEntry entry, String value) {
        return choices(entry).stream()
                .filter(choice -> choice.value().equals(value))
                .map(Choice::says)
                .findFirst()
                .orElseGet(() -> new PolicyText(texts).withUnit(value, entry.setting()));
    }

    /** Which values it takes. */
    public String accepts(PolicyEntry entry) {
        List<String> says = choices(entry).stream().map(Choice::says).toList();
        return says.isEmpty()
                ? new PolicyText(texts).accepts(entry)
                : texts.say("policy.accepts", texts.say("accepts.oneOf", String.join(", ", says)));
    }
}
