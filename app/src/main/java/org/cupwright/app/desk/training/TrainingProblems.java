package org.cupwright.app.desk.training;

import org.cupwright.message.Message;
import org.cupwright.message.Message.Argument;
import org.cupwright.message.Problem;

/** What keeps a record of training from being kept. */
final class TrainingProblems {
    private TrainingProblems() {}

    static Problem of(String name, String field, Object value, Argument... about) {
        return Problem.of(
                Message.of("training.problem." + name, about), field, value, Message.of("training.try." + name, about));
    }
}
