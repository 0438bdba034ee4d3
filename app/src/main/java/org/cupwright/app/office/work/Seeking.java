package org.cupwright.app.office.work;

import org.cupwright.app.desk.Progress;
import org.cupwright.app.session.Session;

/**
 * What a page seeks, which takes a moment where it is remembered, and longer where it is not.
 *
 * @param <T> what is found
 */
@FunctionalInterface
public interface Seeking<T> {
    /**
     * Seeks it.
     *
     * @param session whoever asked, with a data folder of its own
     * @param progress is told how far it has come, and stops it
     * @throws org.cupwright.message.Problem when it cannot be found, or was stopped
     */
    T in(Session session, Progress progress);
}
