package org.cupwright.app.desk.entry;

import java.util.Optional;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.course.Course;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.check.FactCheck;
import org.cupwright.cupchange.check.FactFinding;
import org.cupwright.message.Message;

/** Asks before an entry is kept that looks wrong. */
public final class FactQuestions {
    private FactQuestions() {}

    /** Refuses a fact with the first question there is about it, unless the person is sure. */
    static void ask(Course course, Fact fact, boolean sure) {
        Optional<Message> question = sure ? Optional.empty() : first(course, fact);
        if (question.isPresent()) {
            String kind = LogProblems.typed(fact.payload().kind());
            String where = fact.hole().map(hole -> hole + ", " + kind).orElse(kind);
            throw LogProblems.asked(question.get(), where);
        }
    }

    /** The first question there is about a fact. */
    public static Optional<Message> first(Course course, Fact fact) {
        return new FactCheck(course).check(fact).stream().map(FactFinding::asks).findFirst();
    }
}
