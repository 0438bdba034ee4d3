package org.cupwright.app.office.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.cupwright.app.answers.PolicyText;
import org.cupwright.app.desk.policy.PolicyEntry;
import org.cupwright.app.desk.policy.ShowPolicy;
import org.cupwright.app.office.frame.SettingWords;
import org.cupwright.app.office.frame.SettingWords.Choice;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.PolicyChange;
import org.cupwright.policy.Setting;

/** The settings in the words and the order of their page. */
record SettingsView(Texts texts, LocalDate day, Map<String, LocalDate> since) {
    private static final String FIRST = "first";

    static SettingsView of(ShowPolicy policy, Texts texts, LocalDate day) {
        return new SettingsView(texts, day, policy.since(day));
    }

    /**
     * Settings that belong together.
     *
     * @param title what they are about
     * @param rows one each
     * @param open whether they are to be seen at once
     */
    record Group(String title, List<Row> rows, boolean open) {}

    /**
     * A setting.
     *
     * @param key its key
     * @param name what it is called
     * @param says what it does
     * @param value the value in force, with its unit
     * @param standing as it came, or what it came as
     * @param accepts which values it takes
     * @param source where the value it came with is from
     * @param since since when it has its value; empty as it came
     * @param own whether the course has set it
     */
    record Row(
            String key,
            String name,
            String says,
            String value,
            String standing,
            String accepts,
            String source,
            String since,
            boolean own) {}

    /**
     * One setting to be changed.
     *
     * @param row what it is
     * @param text the value as it is typed
     * @param choices where it is one of a few; empty where it is typed
     * @param unit its unit
     * @param from the first day of the new value
     * @param changes every value it was ever given, and from when
     * @param problem why it was refused; empty where it was not
     */
    record One(
            Row row,
            String text,
            List<Choice> choices,
            String unit,
            String from,
            List<String> changes,
            String problem) {}

    /** What is decided first, then all others by what they are about. */
    List<Group> groups(List<PolicyEntry> first, List<PolicyEntry> all) {
        Map<String, List<Row>> groups = new LinkedHashMap<>();
        first.forEach(
                entry -> groups.computeIfAbsent(FIRST, key -> new ArrayList<>()).add(row(entry)));
        for (PolicyEntry entry : all) {
            String slice = entry.setting().key().replaceFirst("[.].*", "");
            groups.computeIfAbsent(slice, key -> new ArrayList<>()).add(row(entry));
        }
        List<Group> titled = new ArrayList<>();
        groups.forEach(
                (name, rows) -> titled.add(new Group(texts.say("course.group." + name), rows, name.equals(FIRST))));
        return titled;
    }

    /** Those in whose words every word stands that is looked for. */
    List<Group> found(List<PolicyEntry> all, String wanted) {
        List<String> words = List.of(wanted.toLowerCase(Locale.ROOT).split("\\s+"));
        List<Row> rows = all.stream()
                .map(this::row)
                .filter(row -> words.stream().allMatch(told(row)::contains))
                .toList();
        return List.of(new Group(texts.say("course.settings.found", rows.size(), wanted), rows, true));
    }

    private static String told(Row row) {
        return String.join(" ", row.key(), row.name(), row.says(), row.value(), row.source())
                .toLowerCase(Locale.ROOT);
    }

    private Row row(PolicyEntry entry) {
        PolicyText words = new PolicyText(texts);
        SettingWords values = new SettingWords(texts);
        String key = entry.setting().key();
        LocalDate from = since.get(key);
        return new Row(
                key,
                name(texts, key),
                words.says(entry),
                values.shown(entry, entry.value()),
                words.standing(entry),
                values.accepts(entry),
                words.source(entry),
                from == null ? "" : texts.say("course.settings.since", texts.day(from)),
                !entry.isDefault());
    }

    /**
     * One to be changed.
     *
     * @param text as it was typed, or as it stands
     */
    One one(PolicyEntry entry, List<PolicyChange> changes, String text, String from, String problem) {
        PolicyText words = new PolicyText(texts);
        return new One(
                row(entry),
                text,
                new SettingWords(texts).choices(entry),
                unit(entry.setting()),
                from,
                changes.stream()
                        .map(change -> texts.say(
                                "course.settings.change",
                                texts.day(change.effective()),
                                new SettingWords(texts).shown(entry, change.value())))
                        .toList(),
                problem);
    }

    /** What a setting is called. */
    static String name(Texts texts, String key) {
        return texts.say("setting.name." + key);
    }

    private String unit(Setting<?> setting) {
        return setting.unit().isEmpty() ? "" : texts.say(setting.unitKey());
    }
}
