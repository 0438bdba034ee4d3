package org.cupwright.app.cli.command;

import java.time.Instant;
import java.util.function.Consumer;
import org.cupwright.app.desk.Progress.Step;

/** Tells on standard error how far work has come, once it has taken longer than a second and at most once a second. */
final class ProgressLine implements Consumer<Step> {
    private final Task task;
    private Instant next;

    ProgressLine(Task task) {
        this.task = task;
        this.next = task.surroundings().clock().instant().plusSeconds(1);
    }

    @Override
    public void accept(Step step) {
        Instant now = task.surroundings().clock().instant();
        if (now.isAfter(next) && step.done() > 0 && step.done() < step.all()) {
            task.err().println(task.texts().say("progress." + step.stage(), step.done(), step.all()));
            next = now.plusSeconds(1);
        }
    }
}
