package org.cupwright.app.office.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.cupwright.app.answers.FactText;
import org.cupwright.app.desk.entry.CorrectFact;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.entry.typed.Part;
import org.cupwright.app.desk.entry.typed.WrittenPart;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.Course;

/** The form of an entry in the words and the order of its page. */
record EntryFormView(Visit visit, Course course) {
    /**
     * A form.
     *
     * @param title what is written down, or put right
     * @param address where it is sent to
     * @param about what is sent with it: what is written down, or the entry that is put right
     * @param id the form's own, by which it is kept once
     * @param first fields that are told first
     * @param more fields that seldom matter
     * @param open whether those are to be seen at once, since something is wrong with one
     * @param wrong what is wrong with the entry as a whole; empty where nothing is
     * @param asks whether that is only asked
     * @param hasFile whether a file may go with it
     */
    record Form(
            String title,
            String address,
            String about,
            UUID id,
            List<Field> first,
            List<Field> more,
            boolean open,
            String wrong,
            boolean asks,
            boolean hasFile) {}

    /** A new entry, not sent yet. */
    Form blank(Chosen chosen) {
        Map<String, String> says = new HashMap<>();
        chosen.says().forEach((part, text) -> says.put(Field.PART + part, text));
        return adding(
                chosen,
                Typed.of(says, visit.texts()),
                Wrong.NOTHING,
                visit.session().ids().get());
    }

    /** A new entry, as it was typed. */
    Form adding(Chosen chosen, Typed typed, Wrong wrong, UUID id) {
        EntryFields fields = new EntryFields(visit.texts(), course, chosen.form(), typed, wrong);
        List<Field> first = new ArrayList<>(List.of(fields.hole(true)));
        first.addAll(chosen.asPlanned() ? List.of() : fields.paced());
        first.addAll(fields.parts(true, visit.date()));
        first.add(fields.when(isNow()));
        List<Field> more = new ArrayList<>(fields.parts(false, visit.date()));
        more.addAll(chosen.asPlanned() ? List.of() : fields.coordinates());
        return form(chosen.words(visit.texts()), "/log/add", chosen.address(), id, first, more, wrong);
    }

    /** Whether what is written down without a time is taken to be happening. */
    private boolean isNow() {
        return LocalDate.ofInstant(visit.session().now(), course.frame().zone()).equals(visit.date());
    }

    /** An entry that stands, to be put right. */
    Form standing(CorrectFact.Standing standing, String about) {
        Map<String, String> says = new HashMap<>();
        EntryForm form = EntryForm.ofKind(standing.was().payload().kind());
        says.put(Typed.HOLE, standing.was().hole().orElse(""));
        for (Part part : form.parts()) {
            if (!part.isPlace()) {
                part.of(standing.was().payload())
                        .map(value -> WrittenPart.of(value, course.frame().zone()))
                        .ifPresent(text -> says.put(Field.PART + part.name(), text));
            }
        }
        Map<String, String> all = new HashMap<>(says);
        says.forEach((name, text) -> all.put(Field.WAS + name, text));
        return correcting(
                standing,
                about,
                Typed.of(all, visit.texts()),
                Wrong.NOTHING,
                visit.session().ids().get());
    }

    /** An entry to be put right, as it was typed. */
    Form correcting(CorrectFact.Standing standing, String about, Typed typed, Wrong wrong, UUID id) {
        Texts texts = visit.texts();
        EntryForm form = EntryForm.ofKind(standing.was().payload().kind());
        EntryFields fields = new EntryFields(texts, course, form, typed, wrong);
        List<Field> first = new ArrayList<>(List.of(fields.hole(false)));
        first.addAll(fields.paced());
        first.addAll(fields.parts(true, visit.date()));
        List<Field> more = new ArrayList<>(fields.parts(false, visit.date()));
        more.addAll(fields.coordinates());
        String was = new FactText(texts, course, standing.policy()).says(standing.was());
        return form(texts.say("log.page.correcting", was), "/log/correct", about, id, first, more, wrong);
    }

    private static Form form(
            String title, String address, String about, UUID id, List<Field> first, List<Field> more, Wrong wrong) {
        boolean open = more.stream().anyMatch(field -> !field.problem().isEmpty());
        boolean hasFile = Stream.concat(first.stream(), more.stream())
                .anyMatch(field -> field.kind().equals("file"));
        return new Form(
                title, address, about, id, first, more, open, leftOver(wrong, first, more), wrong.asks(), hasFile);
    }

    /** What is wrong, where it is with no field that is shown. */
    private static String leftOver(Wrong wrong, List<Field> first, List<Field> more) {
        List<String> shown =
                Stream.concat(first.stream(), more.stream()).map(Field::name).toList();
        List<String> left = new ArrayList<>(wrong.whole().isEmpty() ? List.of() : List.of(wrong.whole()));
        wrong.at().forEach((name, says) -> {
            if (!shown.contains(name)) {
                left.add(says);
            }
        });
        return String.join(" ", left);
    }
}
