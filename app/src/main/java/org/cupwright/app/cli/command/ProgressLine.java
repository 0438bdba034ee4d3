package org.cupwright.app.cli.command;

import java.time.Instant;
import org.cupwright.app.desk.Progress;

/** Tells on standard error how far work has come, once it has taken longer than a second and at most once a second. */
public final class ProgressLine implements Progress {
    private final Task task;
    private Instant next;

    public ProgressLine(Task task) {
        this.task = task;
        this.next = task.surroundings().clock().instant().plusSeconds(1);
    }

    @Override
    public synchronized void finished(String hole, int done, int all) {
        Instant now = task.surroundings().clock().instant();
        if (now.isAfter(next) && done < all) {
            task.surroundings().err().println(task.texts().say("progress.greens", done, all));
            next = now.plusSeconds(1);
        }
    }
}
