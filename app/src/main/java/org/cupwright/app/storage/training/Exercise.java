package org.cupwright.app.storage.training;

/** What is practised off the round, so often in a row. How often is our choice. */
public enum Exercise {
    /** Plugs that are level at the first try. */
    LEVEL_PLUGS(10),
    /** Cups that sit at depth at the first try. */
    CUPS_AT_DEPTH(5),
    /** 20 m stepped out to within a pace. */
    PACES(3);

    private final int goal;

    Exercise(int goal) {
        this.goal = goal;
    }

    /** So many in a row are what it is about. */
    public int goal() {
        return goal;
    }
}
