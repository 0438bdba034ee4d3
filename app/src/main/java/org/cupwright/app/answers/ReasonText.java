package org.cupwright.app.answers;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.texts.Texts;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Verdict;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Length;
import org.cupwright.units.Paces;

/**
 * Why a hole is where it is, in words. How far off is still good is said as beside the spot itself, in half paces and
 * rounded down: of one thing there are not to be two figures.
 */
public record ReasonText(Texts texts, double paceMetres) {
    private static final String ROOM = "rotation.reason.room";

    private static final String DIFFICULTY = "rotation.reason.difficulty";

    /** All reasons, the most telling first. */
    public List<String> all(StoredHole hole) {
        return said(hole, hole.reasons().stream());
    }

    /**
     * The reasons without what the summary of the spot says already.
     *
     * @param spot the spot as the summary tells it
     */
    public List<String> besideTheSummary(StoredHole hole, Judgement spot) {
        boolean plays = spot.difficulty().rank().isPresent();
        return said(
                hole,
                hole.reasons().stream()
                        .filter(reason -> !reason.key().equals(ROOM))
                        .filter(reason -> !(plays && reason.key().equals(DIFFICULTY))));
    }

    private List<String> said(StoredHole hole, Stream<Message> reasons) {
        Verdict verdict = hole.position().judgement().verdict();
        return reasons.map(reason -> says(reason, verdict)).toList();
    }

    private String says(Message reason, Verdict verdict) {
        boolean room = reason.key().equals(ROOM) && reason.arguments().get(0) instanceof Length;
        return room ? within((Length) reason.arguments().get(0), verdict) : texts.say(reason);
    }

    private String within(Length room, Verdict verdict) {
        String within = JudgementText.within(Paces.roundedDownToHalf(room.metres(), paceMetres), verdict, texts);
        return within.substring(0, 1).toUpperCase(Locale.forLanguageTag(texts.language())) + within.substring(1) + ".";
    }
}
