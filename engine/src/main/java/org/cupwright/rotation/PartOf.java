package org.cupwright.rotation;

import org.cupwright.green.Lateral;
import org.cupwright.green.Third;
import org.cupwright.holelocation.DifficultyClass;

/** Which part of its split a third, a side or a difficulty is. */
final class PartOf {
    private PartOf() {}

    static int third(Third third) {
        return switch (third) {
            case FRONT -> 0;
            case MIDDLE -> 1;
            case BACK -> 2;
        };
    }

    static int lateral(Lateral lateral) {
        return switch (lateral) {
            case LEFT -> 0;
            case CENTRE -> 1;
            case RIGHT -> 2;
        };
    }

    static int difficulty(DifficultyClass rank) {
        return switch (rank) {
            case EASIER -> 0;
            case MEDIUM -> 1;
            case HARDER -> 2;
        };
    }
}
