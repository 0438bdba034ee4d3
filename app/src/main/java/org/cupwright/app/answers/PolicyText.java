package org.cupwright.app.answers;

import java.util.regex.Pattern;
import org.cupwright.app.desk.policy.PolicyEntry;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;
import org.cupwright.policy.Setting;

/** Settings in words. */
public record PolicyText(Texts texts) {
    private static final Pattern DECIMALS = Pattern.compile("-?\\d+\\.\\d+");

    /** What the setting does. */
    public String says(PolicyEntry entry) {
        return texts.say(entry.setting().sentenceKey());
    }

    /** The value in force, with its unit. */
    public String value(PolicyEntry entry) {
        return withUnit(entry.value(), entry.setting());
    }

    /** A value that it has, had or will have. */
    public String withUnit(String value, Setting<?> setting) {
        String shown = value.isEmpty() ? "–" : asWritten(value);
        return setting.unit().isEmpty() ? shown : shown + " " + texts.say(setting.unitKey());
    }

    /** A number with its decimals as the language writes them; whatever else it is, as it is kept. */
    private String asWritten(String value) {
        return DECIMALS.matcher(value).matches()
                ? texts.number(Double.parseDouble(value), value.length() - value.indexOf('.') - 1)
                : value;
    }

    /** As it came, or what it came as. */
    public String standing(PolicyEntry entry) {
        return entry.isDefault() ? texts.say("policy.isDefault") : isSet(entry);
    }

    /** In a word where the value comes from. */
    public String from(PolicyEntry entry) {
        return entry.isDefault()
                ? texts.say(
                        "policy.from." + EnumNames.lowerCamel(entry.setting().sourceKind()))
                : isSet(entry);
    }

    private String isSet(PolicyEntry entry) {
        return texts.say("policy.isSet", withUnit(entry.defaultText(), entry.setting()));
    }

    /** Which values it takes. */
    public String accepts(PolicyEntry entry) {
        return texts.say("policy.accepts", texts.say(entry.setting().type().accepts()));
    }

    /** Where the value that it came with is from. */
    public String source(PolicyEntry entry) {
        Setting<?> setting = entry.setting();
        return texts.say("mark." + EnumNames.lowerCamel(setting.sourceKind())) + ": " + setting.source() + ".";
    }
}
