package org.cupwright.green;

/** How a green was surveyed, which tells what its points share of their errors ({@link Sharing}). */
public enum SurveyKind {
    /** Laser ranging from an aircraft. */
    LIDAR,
    /** A model made from photographs that a drone took. */
    DRONE,
    /** A satellite receiver with corrections, carried from point to point (real-time kinematic). */
    RTK,
    /** A laser scanner on a tripod. */
    SCAN,
    /** A level or a total station, each point sighted by itself. */
    LEVELLED
}
