package org.cupwright.app.desk.log;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.cupwright.cupchange.Fact;
import org.cupwright.formats.table.WrittenDay;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** What can be wrong with an entry of the logbook as a person gives it. */
public final class LogProblems {
    private LogProblems() {}

    /** A name as it is easiest to type: {@code cup-changed}. */
    public static String typed(String name) {
        return name.replaceAll("([a-z0-9])([A-Z])", "$1-$2").toLowerCase(Locale.ROOT);
    }

    public static Problem kind(String given, List<String> like, List<String> all) {
        Message advice = like.isEmpty()
                ? Message.of("try.log.kind", new Name(String.join(", ", all)))
                : Message.of("try.log.kindLike", new Name(String.join(", ", like)));
        return Problem.of(Message.of("problem.log.kind", new Name(given)), "kind", given, advice);
    }

    public static Problem part(String kind, String given, List<String> all) {
        return Problem.of(
                Message.of("problem.log.part", new Name(kind), new Name(given)),
                set(given),
                given,
                all.isEmpty()
                        ? Message.of("try.log.noParts")
                        : Message.of("try.log.parts", new Name(String.join(", ", all))));
    }

    public static Problem partUnclear(String given, List<String> fitting) {
        return Problem.of(
                Message.of("problem.log.partUnclear", new Name(given)),
                set(given),
                given,
                Message.of("try.log.partUnclear", new Name(String.join(", ", fitting))));
    }

    public static Problem value(String part, String given, Message takes) {
        return Problem.of(Message.of("problem.log.value", new Name(part), new Name(given)), set(part), given, takes);
    }

    public static Problem day(String part, String given) {
        return Problem.of(WrittenDay.whyNot(given), set(part), given, Message.of("day.try"));
    }

    /**
     * Parts that an entry needs and that were not given.
     *
     * @param parts by name
     * @param examples how each is given
     */
    public static Problem missing(String kind, List<String> parts, List<Message> examples) {
        String names = String.join(", ", parts);
        return Problem.of(
                Message.of("problem.log.missing", new Name(kind), new Name(names)),
                Message.of("where.field", new Message.Field("request")),
                names,
                Message.of("try.log.missing", new Message.Said(examples)));
    }

    /** @param which {@code noPhoto}: none came with the entry; {@code photoLost}, {@code photoBroken}: one did */
    public static Problem photo(String which, String id) {
        return Problem.of(
                Message.of("problem.log." + which, new Name(id)), "entry", id, Message.of("try.log." + which));
    }

    /** What the records themselves refuse. */
    public static Problem impossible(String kind, Message.Argument why) {
        return Problem.of(
                Message.of("problem.log.impossible", why),
                Message.of("where.place", new Name(kind)),
                "",
                Message.of("try.log.impossible"));
    }

    /** A time that the clocks left out when they were put forward. */
    public static Problem leftOut(String given, Message what, String forward) {
        return Problem.of(what, "when", given, Message.of("try.log.leftOut", new Name(forward)));
    }

    private static final Set<String> QUESTIONS = Set.of("try.log.sure", "try.log.again", "try.log.leftInstead");

    /** Whether a problem is only asked, and what was said may be right all the same. */
    public static boolean asks(Problem problem) {
        return QUESTIONS.contains(problem.tryThis().key());
    }

    /** Something that looks wrong and may be right. */
    public static Problem asked(Message asks, String where) {
        return Problem.of(asks, Message.of("where.place", new Name(where)), "", Message.of("try.log.sure"));
    }

    /** The hole has a change on record that day. */
    public static Problem again(Fact before) {
        String hole = before.hole().orElse("");
        return Problem.of(
                Message.of("problem.log.again", new Name(hole), new Name(before.person())),
                "hole",
                hole,
                Message.of("try.log.again", new Name(before.id().toString().substring(0, 8))));
    }

    /** The hole has been entered as cut that day, and is now said to have been left where it was. */
    public static Problem leftInstead(Fact before) {
        String hole = before.hole().orElse("");
        return Problem.of(
                Message.of("problem.log.leftInstead", new Name(hole), new Name(before.person())),
                "hole",
                hole,
                Message.of("try.log.leftInstead"));
    }

    static Problem severalIds(String given, List<String> found) {
        return Problem.of(
                Message.of("problem.log.severalIds", new Name(given)),
                "entry",
                given,
                Message.of("try.log.severalIds", new Name(String.join(", ", found))));
    }

    private static Message set(String part) {
        return Message.of("where.part", new Name(part));
    }
}
