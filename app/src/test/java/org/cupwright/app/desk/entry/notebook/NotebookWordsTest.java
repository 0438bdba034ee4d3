package org.cupwright.app.desk.entry.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.Spot;
import org.cupwright.cupchange.CupWork.Across;
import org.cupwright.cupchange.CupWork.Depth;
import org.cupwright.green.Side;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.Test;

/** Invented entries as crews write them. */
class NotebookWordsTest {
    @Test
    void pacesAreReadInAnyOrder() {
        NotebookPlace left = new NotebookPlace.Paced(new Spot.Paced(12, Side.LEFT, 5));
        for (String words : List.of(
                "12 on 5 left",
                "12 on, 5 from the left",
                "12 paces on, 5 paces from left",
                "12 on left 5",
                "12 ON / L5",
                "5 left, 12 on",
                "L5, 12 on",
                "12 L5",
                "12F 5L",
                "12f, 5l.",
                "12 on. 5 from left.",
                "12 from front, 5 from the left edge",
                "12 on, 5 paces from left edge.",
                "5L 12")) {
            assertThat(NotebookWords.of(words)).as(words).isEqualTo(left);
        }
        NotebookPlace right = new NotebookPlace.Paced(new Spot.Paced(14, Side.RIGHT, 5));
        for (String words : List.of(
                "14F 5R",
                "14f 5r.",
                "14 on, 5 from right edge",
                "14 on, 5 from right edge.",
                "14 on, 5 from the right edge.",
                "5 from right edge, 14 on",
                "14 on. 5 right.")) {
            assertThat(NotebookWords.of(words)).as(words).isEqualTo(right);
        }
        assertThat(NotebookWords.of("10\u00bd on 4,5 right"))
                .isEqualTo(new NotebookPlace.Paced(new Spot.Paced(10.5, Side.RIGHT, 4.5)));
    }

    @Test
    void aPartOfTheGreenStaysOne() {
        for (String words : List.of(
                "back left", "Left back", "back-left", "the back left", "BL", "B/L", "b.l.", "LB", "Back left.")) {
            assertThat(NotebookWords.of(words))
                    .as(words)
                    .isEqualTo(new NotebookPlace.PartOf(Depth.BACK, Optional.of(Across.LEFT)));
        }
        assertThat(NotebookWords.of("front center"))
                .isEqualTo(new NotebookPlace.PartOf(Depth.FRONT, Optional.of(Across.CENTRE)));
        assertThat(NotebookWords.of("front middle"))
                .isEqualTo(new NotebookPlace.PartOf(Depth.FRONT, Optional.of(Across.CENTRE)));
        assertThat(NotebookWords.of("middle right"))
                .isEqualTo(new NotebookPlace.PartOf(Depth.MIDDLE, Optional.of(Across.RIGHT)));
        assertThat(NotebookWords.of("Middle"))
                .isEqualTo(new NotebookPlace.PartOf(Depth.MIDDLE, Optional.of(Across.CENTRE)));
        assertThat(NotebookWords.of("back")).isEqualTo(new NotebookPlace.PartOf(Depth.BACK, Optional.empty()));
    }

    @Test
    void aHoleThatStayedIsNoNewOne() {
        for (String words : List.of(
                "left in yesterday's hole", "left in yesterday\u2019s hole", "not changed", "same", "as yesterday")) {
            assertThat(NotebookWords.of(words)).as(words).isEqualTo(new NotebookPlace.Unchanged());
        }
    }

    @Test
    void whatCanBeReadTwoWaysOrNotAtAllIsRefused() {
        for (String words : List.of(
                "5 L 12",
                "12 r 4",
                "left",
                "by the oak",
                "BB",
                "L",
                "LR",
                "12 on",
                "12 yards on 5 left",
                "back front",
                "400 on 5 left")) {
            assertThatThrownBy(() -> NotebookWords.of(words)).as(words).isInstanceOf(Problem.class);
        }
    }
}
