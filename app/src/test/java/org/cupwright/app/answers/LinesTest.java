package org.cupwright.app.answers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;

class LinesTest {
    private static final String LONG = "word ".repeat(19) + "word"; // 99 characters, one more than a terminal takes

    private final Lines lines =
            new Lines(Texts.find("en", Door.COMMANDS, UnitSystem.METRIC, 0.9).orElseThrow());

    @Test
    void columnsKeepTheirWidthAndWhatIsTooLongABlank() {
        lines.row(List.of(Line.left("7", 3), Line.right("12", 4)), " m");
        lines.row(List.of(Line.left("practice", 3)), "m");

        assertThat(Layout.set(lines)).containsExactly("7    12 m", "practice m");
    }

    @Test
    void whatIsWrappedGoesOnBelowWhereItBegan() {
        lines.wrapped("  – ", LONG).indented("  ", LONG).line(LONG);

        assertThat(Layout.set(lines))
                .containsExactly(
                        "  – " + "word ".repeat(18) + "word",
                        "    word",
                        "  " + "word ".repeat(18) + "word",
                        "    word",
                        LONG);
    }

    @Test
    void sentencesThatDoNotFitAreLeftOutTheFirstExcepted() {
        String half = "word ".repeat(9) + "word";
        lines.first("     ", List.of(half, LONG, "short.", half)).first("     ", List.of(LONG, "short."));
        lines.first("     ", List.of());

        assertThat(Layout.set(lines)).containsExactly("     " + half + " short.", "     " + LONG);
    }

    @Test
    void whatIsAlikeStandsTogetherInTheOrderOfTheFirst() {
        assertThat(Lines.alike(List.of("b1", "a1", "b2", "c1", "a2"), name -> name.charAt(0)))
                .containsExactly(List.of("b1", "b2"), List.of("a1", "a2"), List.of("c1"));
    }
}
