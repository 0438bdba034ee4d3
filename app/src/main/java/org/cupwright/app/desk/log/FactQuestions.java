package org.cupwright.app.desk.log;

import java.util.List;
import org.cupwright.course.Course;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.check.FactCheck;
import org.cupwright.cupchange.check.FactFinding;

/** Asks before an entry is kept that looks wrong. */
final class FactQuestions {
    private FactQuestions() {}

    /** Refuses a fact with the first question there is about it, unless the person is sure. */
    static void ask(Course course, Fact fact, boolean sure) {
        List<FactFinding> findings = new FactCheck(course).check(fact);
        if (!sure && !findings.isEmpty()) {
            String kind = EntryForm.typed(fact.payload().kind());
            String where = fact.hole().map(hole -> hole + ", " + kind).orElse(kind);
            throw LogProblems.asked(findings.get(0).asks(), where);
        }
    }
}
