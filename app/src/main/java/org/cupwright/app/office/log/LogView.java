package org.cupwright.app.office.log;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.answers.FactText;
import org.cupwright.app.desk.entry.ListFacts;
import org.cupwright.app.desk.entry.SeeToOdd;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.app.desk.log.OddThings;
import org.cupwright.app.office.log.Field.Choice;
import org.cupwright.app.session.Right;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.cupwright.cupchange.CrewNote.OddSeen;
import org.cupwright.cupchange.CrewNote.Severity;
import org.cupwright.cupchange.CrewNote.SomethingOdd;
import org.cupwright.cupchange.Fact;
import org.cupwright.policy.EnumNames;

/** The logbook of a day in the words and the order of its page. */
record LogView(Visit visit) {
    /**
     * The page.
     *
     * @param title the day
     * @param odd what nobody has seen to, the urgent first
     * @param entries what was done and seen that day
     * @param doings what can be written down, the commonest first
     * @param kinds every kind of entry there is
     * @param mayRecord whether whoever looks may write it down
     */
    record Log(
            String title,
            List<Odd> odd,
            List<Entry> entries,
            List<Choice> doings,
            List<Choice> kinds,
            boolean mayRecord) {}

    /**
     * Something odd, and the id of the form that says it is seen to: how urgent, what, where and since when, and
     * whether it has a photo.
     */
    record Odd(String id, UUID form, String severity, boolean now, String text, String about, boolean photo) {}

    /**
     * An entry.
     *
     * @param id by which it is put right
     * @param time when
     * @param hole where; a dash for the whole course
     * @param says what it says
     * @param person who says so
     * @param clocks what the telephone's clock showed, where it was wrong; else empty
     * @param corrected whether it said something else at first
     * @param correctable whether its parts can be put right
     * @param photo whether it has a photo
     */
    record Entry(
            String id,
            String time,
            String hole,
            String says,
            String person,
            String clocks,
            boolean corrected,
            boolean correctable,
            boolean photo) {}

    Log of(ListFacts.Answer answer, SeeToOdd.Unseen unseen) {
        Texts texts = visit.texts();
        FactText words = new FactText(texts, answer.course(), answer.policy());
        return new Log(
                texts.day(visit.date()),
                unseen.things().stream().map(thing -> odd(thing, words)).toList(),
                answer.facts().stream().map(fact -> entry(fact, answer, words)).toList(),
                Arrays.stream(Doing.values())
                        .map(doing -> new Choice(doing.address(), texts.say("log.page.do." + doing.key())))
                        .toList(),
                EntryForm.all().stream()
                        .map(form -> new Choice(LogProblems.typed(form.kind()), texts.say("log.kind." + form.kind())))
                        .sorted((one, other) -> one.label().compareToIgnoreCase(other.label()))
                        .toList(),
                visit.may(Right.RECORD));
    }

    private Odd odd(OddThings.Thing thing, FactText words) {
        Texts texts = visit.texts();
        Fact fact = thing.fact();
        SomethingOdd odd = thing.odd();
        String hole =
                fact.hole().map(id -> texts.say("log.page.hole.one", id) + ", ").orElse("");
        return new Odd(
                fact.id().toString(),
                visit.session().ids().get(),
                texts.say("log.choice.severity." + EnumNames.lowerCamel(odd.severity())),
                odd.severity() == Severity.NOW,
                odd.text(),
                hole + words.day(fact) + " " + words.time(fact) + ", " + fact.person(),
                odd.photo().isPresent());
    }

    private static Entry entry(Fact fact, ListFacts.Answer answer, FactText words) {
        Optional<String> photo = fact.payload() instanceof SomethingOdd odd ? odd.photo() : Optional.empty();
        return new Entry(
                fact.id().toString(),
                words.time(fact),
                words.hole(fact),
                words.says(fact),
                fact.person(),
                words.clocks(fact).orElse(""),
                answer.corrected().contains(fact.id()),
                !(fact.payload() instanceof OddSeen),
                photo.isPresent());
    }
}
