package org.cupwright.app.office.work;

import org.cupwright.app.answers.Lines;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.session.Session;

/** What is to be done in the background. */
@FunctionalInterface
public interface LongWork {
    /**
     * Does it.
     *
     * @param session whoever began it, with a data folder of its own
     * @param progress is told how far it has come, and stops it
     * @return what it came to, in words
     * @throws org.cupwright.message.Problem when it could not be done, or was stopped before anything was kept
     */
    Lines in(Session session, Progress progress);
}
