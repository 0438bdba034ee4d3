package org.cupwright.app.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.paper.RimWhited;
import org.cupwright.app.sheets.CourseAnswers;

/** The hand work on one green, step by step, as this course does it: by its cutter, and by one piece or two. */
record HandWork(CourseAnswers course) {
    /**
     * One step.
     *
     * @param name of its sentence
     * @param drawing of it
     * @param answers what the course decided about it
     * @param ifs what may come in between, by name: each is a question and what to do then
     */
    record Step(String name, String drawing, List<String> answers, List<String> ifs) {
        static Step of(String name) {
            return new Step(name, name, List.of(), List.of());
        }

        /** The same drawing for a way of doing it. */
        static Step of(String name, String way) {
            return new Step(name + way, name, List.of(), List.of());
        }

        Step answered(Optional<String> answer) {
            return new Step(name, drawing, answer.stream().toList(), ifs);
        }

        Step unless(String... names) {
            return new Step(name, drawing, answers, List.of(names));
        }
    }

    List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        steps.add(Step.of("look").answered(Optional.of(course.mown())));
        steps.add(Step.of("spot"));
        cut(steps);
        steps.add(Step.of("old"));
        steps.add(Step.of("wipe"));
        steps.add(Step.of("cup").unless("stuck"));
        rim(steps);
        plug(steps);
        steps.add(Step.of("flag").unless("leans", "leansStill"));
        steps.add(Step.of("brush"));
        steps.add(Step.of("plugs").answered(course.nursery()));
        steps.add(Step.of("marks").answered(Optional.of(course.ballMarks())));
        steps.add(Step.of("last"));
        steps.add(Step.of("tools").answered(course.sharpens()));
        return steps;
    }

    private void cut(List<Step> steps) {
        String way = course.hammered() ? "Hammered" : "Turned";
        steps.add(Step.of("straight"));
        if (course.hammered()) {
            steps.add(Step.of("hammer"));
        }
        steps.add(Step.of("half", way));
        if (course.twoPieces()) {
            steps.add(Step.of("upper"));
        }
        steps.add(Step.of("full", way));
        steps.add(Step.of(course.twoPieces() ? "lower" : "draw"));
    }

    private void rim(List<Step> steps) {
        boolean white = course.rimWhited() != RimWhited.NEVER;
        Optional<String> answer = Optional.of(course.rim());
        steps.add(white ? Step.of("rim") : Step.of("rim").answered(answer));
        if (white) {
            steps.add(Step.of("white").answered(answer.filter(told -> course.rimWhited() == RimWhited.EVENTS)));
        }
    }

    private void plug(List<Step> steps) {
        steps.add(Step.of("clear"));
        if (course.twoPieces()) {
            steps.add(Step.of("halves"));
        }
        steps.add(Step.of("plug").answered(course.soil()).unless("high", "low"));
        steps.add(Step.of("roll"));
        steps.add(Step.of("knit"));
        steps.add(Step.of("water"));
    }
}
