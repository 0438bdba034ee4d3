package org.cupwright.rotation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.policy.EnumNames;
import org.cupwright.rotation.counting.Parts;
import org.cupwright.rotation.counting.Split;

/**
 * The next best position of another kind for each hole, all others staying where they are, and what it would have
 * cost.
 */
final class Alternatives {
    private final DayOutcome outcome;
    private final Aims aims;

    Alternatives(DayOutcome outcome, Aims aims) {
        this.outcome = outcome;
        this.aims = aims;
    }

    Optional<Alternative> of(OpenGreen green, Appraised chosen) {
        return green.kinds().stream()
                .filter(other -> !other.equals(chosen))
                .min(Comparator.comparingInt((Appraised other) -> aims.thirdsOff(tallyWith(chosen, other)))
                        .thenComparingLong(
                                other -> other.option().cost() + Price.ofDay(tallyWith(chosen, other), aims)))
                .map(other -> new Alternative(other.candidate(), whyNot(chosen, other)));
    }

    private long tallyWith(Appraised chosen, Appraised other) {
        return outcome.tally() - chosen.option().tally() + other.option().tally();
    }

    private List<Message> whyNot(Appraised chosen, Appraised other) {
        long tally = tallyWith(chosen, other);
        List<Message> why = new ArrayList<>();
        if (aims.thirdsOff(tally) > outcome.thirdsOff()) {
            Parts thirds = Split.THIRD.parts(tally);
            why.add(Message.of(
                    "rotation.whyNot.thirds",
                    new Count(thirds.first()),
                    new Count(thirds.second()),
                    new Count(thirds.third())));
        }
        for (Term term : Term.values()) {
            double here = chosen.terms().get(term) + aims.ofDay(term, outcome.tally());
            double there = other.terms().get(term) + aims.ofDay(term, tally);
            if (there > here && aims.weight(term) > 0) {
                why.add(Message.of(
                        "rotation.whyNot." + EnumNames.lowerCamel(term),
                        Measures.of(term.unit(), here),
                        Measures.of(term.unit(), there)));
            }
        }
        return why.isEmpty() ? List.of(Message.of("rotation.whyNot.justAsGood")) : why;
    }
}
