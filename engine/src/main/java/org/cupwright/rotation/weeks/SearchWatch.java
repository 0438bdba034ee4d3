package org.cupwright.rotation.weeks;

/** Hears how far a search has come, and may stop it. */
public interface SearchWatch {
    /**
     * @param done holes priced so far
     * @param all holes that will be priced at most
     * @return whether to go on; otherwise the best plan so far is the answer
     */
    boolean goOn(long done, long all);

    /** Lets it work to its end. */
    static SearchWatch patient() {
        return (done, all) -> true;
    }
}
