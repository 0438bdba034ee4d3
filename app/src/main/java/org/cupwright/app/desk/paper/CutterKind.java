package org.cupwright.app.desk.paper;

/** How the course's cutters go into the ground. */
public enum CutterKind {
    TURNED,
    HAMMERED
}
