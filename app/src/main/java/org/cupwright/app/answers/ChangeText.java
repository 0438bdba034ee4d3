package org.cupwright.app.answers;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.cupwright.app.desk.plan.ChangeWeeks;
import org.cupwright.app.desk.plan.ChangedHole;
import org.cupwright.app.desk.plan.UndoChange;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.PlacePolicy;
import org.cupwright.rotation.weeks.Evenness;

/** Changed plans in words: which holes, day by day, why, and what it costs the balance. */
public record ChangeText(Texts texts) {
    public Lines lines(ChangeWeeks.Answer answer) {
        Lines lines = new Lines(texts);
        String course = answer.day().course().name();
        if (answer.stored().isEmpty()) {
            lines.wrapped("", texts.say("change.nothing", course));
        } else if (answer.changes().isEmpty()) {
            lines.wrapped("", texts.say("change.kept", course));
        } else {
            long days =
                    answer.changes().stream().map(ChangedHole::date).distinct().count();
            lines.wrapped("", texts.say("change.title", course, answer.changes().size(), days));
        }
        if (!answer.standing().isEmpty()) {
            String names = answer.standing().stream().map(texts::weekday).collect(Collectors.joining(", "));
            lines.wrapped("", texts.say("weeks.standing", answer.standing().size(), names));
        }
        holes(answer.changes(), answer.day().policy().get(PlacePolicy.PACE_METRES), true, lines);
        if (!answer.changes().isEmpty()) {
            lines.gap().wrapped("", balance(answer.before(), answer.after()));
        }
        return lines;
    }

    public Lines undone(UndoChange.Answer answer) {
        Lines lines = new Lines(texts);
        lines.wrapped(
                "",
                texts.say(
                        "change.undone",
                        answer.course().name(),
                        answer.change().person(),
                        answer.change().days().size()));
        holes(answer.holes(), answer.policy().get(PlacePolicy.PACE_METRES), false, lines);
        return lines;
    }

    private void holes(List<ChangedHole> changes, double paceMetres, boolean withReasons, Lines lines) {
        PositionText positions = new PositionText(texts, paceMetres);
        for (List<ChangedHole> day : Lines.alike(changes, ChangedHole::date)) {
            LocalDate date = day.get(0).date();
            lines.gap().line(texts.day(date));
            for (ChangedHole hole : day) {
                lines.wrapped(
                        List.of(Line.left("  " + hole.hole(), 6)),
                        texts.say(
                                "change.hole",
                                hole.from().map(from -> at(from, positions)).orElse("–"),
                                hole.to().map(to -> at(to, positions)).orElse("–")));
                if (withReasons) {
                    lines.wrapped("      ", texts.say(hole.why()));
                }
            }
        }
    }

    private static String at(StoredHole hole, PositionText positions) {
        return positions.of(hole.position());
    }

    /** What is another number than before; that nothing is, where nothing is. */
    private String balance(Evenness before, Evenness after) {
        List<String> said = new ArrayList<>();
        counted("thirds", before.thirdsOff(), after.thirdsOff(), said);
        counted("leftRight", before.leftRight(), after.leftRight(), said);
        counted("lateral", before.lateral(), after.lateral(), said);
        counted("difficulty", before.difficulty(), after.difficulty(), said);
        String was = texts.say("change.percent", before.hardestOffPercent());
        String is = texts.say("change.percent", after.hardestOffPercent());
        if (!was.equals(is)) {
            said.add(texts.say("change.balance.evenDays", was, is));
        }
        return said.isEmpty() ? texts.say("change.balance.same") : texts.say("change.balance", String.join(" ", said));
    }

    private void counted(String what, double before, double after, List<String> said) {
        if (before != after) {
            said.add(texts.say("change.balance." + what, before, after));
        }
    }
}
