package org.cupwright.rotation;

import java.util.Map;
import org.cupwright.rotation.counting.CheapestChoice.Choice;

/** Searches the plans of one day: the best of them, and how good any could be. */
public interface DaySearch {
    /** The fewest holes off even thirds that the day's greens allow. */
    int thirdsOff();

    /** Of the plans whose thirds are as even as can be, the one of least price. */
    Choice find();

    /** For each term the least value among all plans whose thirds are as even as can be, each in its own unit. */
    Map<Term, Double> bounds();
}
