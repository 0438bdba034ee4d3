package org.cupwright.app.field;

import org.cupwright.app.sheets.CourseAnswers;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.Policy;
import org.cupwright.turf.TurfPolicy;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The hand work as it is carried, in words; and how many greens running one way ask for a look at a cutter's stop. */
record CarriedWork(Texts texts, Policy policy) {
    void into(ObjectNode day) {
        CourseAnswers course = new CourseAnswers(texts, policy);
        ArrayNode steps = day.putArray("work");
        new HandWork(course).steps().forEach(step -> step(step, steps.addObject()));
        day.put("way", course.hammered() ? "hammerIn" : course.twoPieces() ? "twoPiece" : "onePiece");
        day.put("sameWayGreens", policy.get(TurfPolicy.SAME_WAY_GREENS));
    }

    private void step(HandWork.Step step, ObjectNode out) {
        out.put("name", step.name());
        out.put("drawing", step.drawing());
        out.put("says", texts.say("round.work." + step.name()));
        step.answers().forEach(out.putArray("answers")::add);
        ArrayNode ifs = out.putArray("ifs");
        for (String name : step.ifs()) {
            ObjectNode one = ifs.addObject();
            one.put("when", texts.say("round.if." + name));
            one.put("then", texts.say("round.then." + name));
        }
    }
}
