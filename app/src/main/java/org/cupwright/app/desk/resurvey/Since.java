package org.cupwright.app.desk.resurvey;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.storage.SurveyVersion;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Field;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** Which earlier survey the newest is compared with. */
public sealed interface Since {
    /** The survey to compare with, of those before the newest; empty when there is no such one. */
    Optional<SurveyVersion> of(List<SurveyVersion> earlier, ZoneId zone);

    /** Says that no green at all has a survey to compare with, where a person named one. */
    default void refuseWhenNowhere() {}

    private static Problem nowhere(String what, String given) {
        return Problem.of(
                Message.of("problem.since." + what, new Name(given)),
                Message.of("where.field", new Field("since")),
                given,
                Message.of("try.since"));
    }

    /** The one before the newest. */
    record Before() implements Since {
        @Override
        public Optional<SurveyVersion> of(List<SurveyVersion> earlier, ZoneId zone) {
            return last(earlier);
        }
    }

    /** The one of a number, as {@code survey list} shows it. */
    record Version(int number) implements Since {
        @Override
        public void refuseWhenNowhere() {
            throw nowhere("version", Integer.toString(number));
        }

        @Override
        public Optional<SurveyVersion> of(List<SurveyVersion> earlier, ZoneId zone) {
            return earlier.stream()
                    .filter(version -> version.number() == number)
                    .findFirst();
        }
    }

    /** The one that was the newest at the end of a day. */
    record Day(LocalDate date) implements Since {
        @Override
        public void refuseWhenNowhere() {
            throw nowhere("day", date.toString());
        }

        @Override
        public Optional<SurveyVersion> of(List<SurveyVersion> earlier, ZoneId zone) {
            return last(earlier.stream()
                    .filter(version ->
                            !version.recordedAt().atZone(zone).toLocalDate().isAfter(date))
                    .toList());
        }
    }

    private static Optional<SurveyVersion> last(List<SurveyVersion> versions) {
        return versions.isEmpty() ? Optional.empty() : Optional.of(versions.get(versions.size() - 1));
    }
}
