package org.cupwright.rotation;

import java.util.List;
import org.cupwright.rotation.counting.CheapestChoice.Choice;

/**
 * Searches the plans of one day: the best of them, and how good any could be.
 *
 * <p>An implementation is made for each day from the greens that are to have a hole and the course's aims; a plan's
 * price is the sum of its options' costs and {@link Price#ofDay} of its tally.
 */
public interface DaySearch {
    /** The fewest holes off even thirds that the day's greens allow. */
    int thirdsOff();

    /** Of the plans whose thirds are as even as can be, the one of least price: for each green, which of its kinds. */
    Choice find();

    /** The least value of a term, in its own unit, among all plans whose thirds are as even as can be. */
    double bound(Term term);

    /** Makes the search of a day. */
    @FunctionalInterface
    interface Maker {
        DaySearch of(List<OpenGreen> greens, Aims aims);
    }
}
