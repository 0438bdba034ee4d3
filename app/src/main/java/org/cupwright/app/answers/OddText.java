package org.cupwright.app.answers;

import java.util.Collection;
import java.util.List;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.log.OddThings;
import org.cupwright.app.texts.Texts;
import org.cupwright.cupchange.Fact;
import org.cupwright.policy.EnumNames;

/** Odd things that nobody has seen to, in words. */
final class OddText {
    private static final int HOLE_WIDTH = 5;

    private final Texts texts;
    private final FactText facts;

    OddText(Texts texts, CourseDay day) {
        this.texts = texts;
        this.facts = new FactText(texts, day.course(), day.policy());
    }

    /** Where and when, how urgent, what, who saw it, and whether there is a photo; then how they are marked as seen. */
    void rows(Collection<OddThings.Thing> things, Lines lines) {
        for (OddThings.Thing thing : things) {
            Fact fact = thing.fact();
            String severity = texts.say(
                    "log.choice.severity." + EnumNames.lowerCamel(thing.odd().severity()));
            String photo = thing.odd().photo().isPresent() ? " " + texts.say("turf.odd.photo") : "";
            lines.wrapped(
                    List.of(
                            Line.left(facts.hole(fact), HOLE_WIDTH),
                            new Line.Cell(facts.moment(fact) + "  " + facts.id(fact) + "  ", 0)),
                    severity + ": " + thing.odd().text() + " (" + fact.person() + ")" + photo);
        }
        lines.row(List.of(Line.left("", HOLE_WIDTH)), texts.say("turf.odd.seen"));
    }
}
