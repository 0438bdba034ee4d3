package org.cupwright.holelocation;

import org.cupwright.policy.EnumNames;

/** The eleven rules asked of a position; their ids are fixed, since scripts and saved plans name them. */
public enum RuleId {
    /** Slope about the hole. */
    LEVEL,
    /** Change of slope about the hole. */
    EVEN_GRADE,
    /** A putt can be stopped by the hole from every side. */
    HOLDABLE,
    /** Distance to the green's edge. */
    EDGE,
    /** Distance to the edge beside a bunker, water or a fall-off. */
    HAZARD,
    /** Distance to steep ground. */
    RIDGE,
    /** Distance to holes that still rest. */
    OLD_HOLE,
    /** Distance to plugs still visible. */
    PLUG,
    /** Ground out of use or in light use. */
    CLOSED_GROUND,
    /** Ground where water stands when it rains. */
    HOLLOW,
    /** Ground that people drew as good or bad. */
    DRAWN_GROUND;

    private final String id = EnumNames.lowerCamel(this);

    /** The id as it stands in JSON and settings: {@code evenGrade}. */
    public String id() {
        return id;
    }
}
