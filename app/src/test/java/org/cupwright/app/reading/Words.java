package org.cupwright.app.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.finding.Finding;
import org.cupwright.formats.table.NotReadLine;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Argument;
import org.cupwright.message.Problem;
import org.cupwright.units.Paces;
import org.cupwright.units.UnitSystem;

/** Puts into words what is said of a file: each message has a sentence, and none is longer than anybody reads. */
final class Words {
    /** A sentence with two excerpts of a file and its advice, with room to spare; our choice. */
    private static final int LONGEST = 1500;

    private final Texts texts = Texts.find("en", Door.COMMANDS, UnitSystem.METRIC, Paces.STANDARD_METRES)
            .orElseThrow();

    void check(Problem problem) {
        check(problem.what());
        problem.where().forEach(this::check);
        check(problem.value());
        check(problem.tryThis());
    }

    void check(Finding finding) {
        check(finding.says());
        check(finding.where());
        check(finding.tryThis());
    }

    void check(List<NotReadLine> lines) {
        lines.forEach(line -> {
            check(line.why());
            check(line.tryThis());
        });
    }

    void check(Message message) {
        assertThat(texts.knows(message.key())).as(message.key()).isTrue();
        String said = texts.say(message);
        assertThat(said.length()).as(said).isBetween(1, LONGEST);
    }

    private void check(Argument value) {
        String said = texts.show(value);
        assertThat(said.length()).as(said).isLessThan(LONGEST);
    }
}
