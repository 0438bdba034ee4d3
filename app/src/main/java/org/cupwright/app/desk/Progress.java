package org.cupwright.app.desk;

/** Is told how far a longer piece of work has come; may be told from several threads. */
@FunctionalInterface
public interface Progress {
    Progress NONE = (hole, done, all) -> {};

    /**
     * Takes note that one more green is done.
     *
     * @param hole the hole just finished
     * @param done how many are finished
     * @param all how many there are
     */
    void finished(String hole, int done, int all);
}
