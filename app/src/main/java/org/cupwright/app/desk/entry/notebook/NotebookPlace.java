package org.cupwright.app.desk.entry.notebook;

import java.util.Optional;
import org.cupwright.app.desk.Spot;
import org.cupwright.cupchange.CupWork.Across;
import org.cupwright.cupchange.CupWork.Depth;

/** Where an old notebook has a hole. */
sealed interface NotebookPlace {
    /** What an entry's id says of it: it must never change. */
    String name();

    /** By paces. */
    record Paced(Spot.Paced spot) implements NotebookPlace {
        @Override
        public String name() {
            return String.join(
                    " ", Double.toString(spot.onPaces()), spot.side().name(), Double.toString(spot.sidePaces()));
        }
    }

    /** In a part of the green, and nobody knows more. */
    record PartOf(Depth depth, Optional<Across> across) implements NotebookPlace {
        @Override
        public String name() {
            return depth.name() + across.map(side -> " " + side.name()).orElse("");
        }
    }

    /** Where it was the day before. */
    record Unchanged() implements NotebookPlace {
        @Override
        public String name() {
            return "UNCHANGED";
        }
    }
}
