package org.cupwright.app.maps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;

/** Where on a drawing there is still room to write; what was written once is not written over. */
final class LabelRoom {
    private final Envelope sheet;
    private final List<Envelope> taken = new ArrayList<>();

    LabelRoom(double width, double height) {
        this.sheet = new Envelope(0, width, 0, height);
    }

    /** Keeps the ground about a point free of writing. */
    void keep(double x, double y, double radius) {
        taken.add(new Envelope(x - radius, x + radius, y - radius, y + radius));
    }

    void keep(Envelope box) {
        taken.add(box);
    }

    /** The first of some boxes that is free; it is then taken. */
    Optional<Envelope> take(List<Envelope> boxes) {
        Optional<Envelope> free = boxes.stream().filter(this::isFree).findFirst();
        free.ifPresent(taken::add);
        return free;
    }

    private boolean isFree(Envelope box) {
        return sheet.contains(box) && taken.stream().noneMatch(box::intersects);
    }
}
