package org.cupwright.cupchange;

/** What a fact says. Each kind is a record of its own, grouped by what it is about. */
public sealed interface Payload permits CupWork, PlugWork, GroundNote, CareWork, DayReading, CrewNote, Correction {
    /** Whether it makes sense for one hole only. */
    boolean needsHole();

    /** The kind as files and the store write it: the record's name in lower camel case. */
    default String kind() {
        return PayloadKinds.nameOf(getClass());
    }
}
