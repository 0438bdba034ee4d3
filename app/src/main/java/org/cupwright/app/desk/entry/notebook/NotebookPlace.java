package org.cupwright.app.desk.entry.notebook;

import java.util.Optional;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.SpotOnGreen;
import org.cupwright.course.Hole;
import org.cupwright.cupchange.CupWork.Across;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.CupWork.CutSomewhere;
import org.cupwright.cupchange.CupWork.CutWay;
import org.cupwright.cupchange.CupWork.Depth;
import org.cupwright.cupchange.CupWork.FoundBy;
import org.cupwright.cupchange.CupWork.LeftInOldHole;
import org.cupwright.cupchange.CupWork.Soil;
import org.cupwright.cupchange.Payload;
import org.cupwright.policy.Policy;

/** Where an old notebook has a hole. */
sealed interface NotebookPlace {
    /** What an entry's id says of it: it must never change. */
    String name();

    /** What an entry says of it. */
    Payload payload(Hole hole, Policy policy);

    /** By paces. */
    record Paced(Spot.Paced spot) implements NotebookPlace {
        @Override
        public String name() {
            return String.join(
                    " ", Double.toString(spot.onPaces()), spot.side().name(), Double.toString(spot.sidePaces()));
        }

        @Override
        public Payload payload(Hole hole, Policy policy) {
            return new CupChanged(
                    Optional.empty(),
                    SpotOnGreen.of(hole, policy, spot),
                    FoundBy.PACES,
                    Optional.empty(),
                    CutWay.ONE_PIECE,
                    Soil.NONE,
                    false,
                    false,
                    Optional.empty());
        }
    }

    /** In a part of the green, and nobody knows more. */
    record PartOf(Depth depth, Optional<Across> across) implements NotebookPlace {
        @Override
        public String name() {
            return depth.name() + across.map(side -> " " + side.name()).orElse("");
        }

        @Override
        public Payload payload(Hole hole, Policy policy) {
            return new CutSomewhere(depth, across);
        }
    }

    /** Where it was the day before. */
    record Unchanged() implements NotebookPlace {
        @Override
        public String name() {
            return "UNCHANGED";
        }

        @Override
        public Payload payload(Hole hole, Policy policy) {
            return new LeftInOldHole(Optional.empty());
        }
    }
}
