package org.cupwright.app.storage;

import org.cupwright.policy.PolicyChange;
import org.cupwright.policy.PolicyHistory;

/** Every setting that was ever changed, by course. */
public interface PolicyStore {
    /** Stands for every course of the folder: changes made before there was any course. */
    String EVERY_COURSE = "";

    /** The changes of a course, after those of {@link #EVERY_COURSE}, in the order in which they were made. */
    PolicyHistory history(String courseId);

    void add(String courseId, PolicyChange change);
}
