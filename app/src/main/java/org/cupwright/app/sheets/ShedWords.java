package org.cupwright.app.sheets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.paper.PaperPolicy;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;

/** What concerns the whole round: what to take along, what the course decided, the hand work in short, cautions. */
public record ShedWords(DaySheet day, Texts texts) {
    private static final List<String> TICKS = List.of(
            "cutter", "mallet", "puller", "setter", "soil", "water", "rag", "knife", "ballMarkTool", "pipe", "flags");
    private static final List<String> HAND_WORK =
            List.of("look", "cut", "old", "cup", "plug", "finish", "flag", "last");
    private static final List<String> CAUTIONS =
            List.of("blade", "play", "thunder", "frost", "spray", "heat", "lifting", "alone", "local");

    /** What to take along: the course's own list, or the usual one. */
    public List<String> ticks() {
        String own = day.policy().get(PaperPolicy.TICK_LIST);
        return own.isBlank()
                ? TICKS.stream().map(tick -> texts.say("sheet.tick." + tick)).toList()
                : Arrays.stream(own.split(",", -1))
                        .map(String::strip)
                        .filter(tick -> !tick.isEmpty())
                        .toList();
    }

    /** What the course decided, where it is needed. */
    public List<String> answers() {
        CourseAnswers course = new CourseAnswers(texts, day.policy());
        List<String> answers = new ArrayList<>(List.of(
                texts.say("sheet.convention." + EnumNames.lowerCamel(day.convention())),
                texts.say("sheet.card.plugs"),
                course.mown(),
                course.pieces(),
                course.rim(),
                course.ballMarks()));
        course.nursery().ifPresent(answers::add);
        return answers;
    }

    /** Whom to ring; empty where the course has not said. */
    public Optional<String> ring() {
        return Optional.of(day.policy().get(PaperPolicy.RING))
                .filter(ring -> !ring.isBlank())
                .map(ring -> texts.say("sheet.card.ring", ring));
    }

    public List<String> handWork() {
        return HAND_WORK.stream().map(key -> texts.say("sheet.work." + key)).toList();
    }

    public List<String> cautions() {
        return CAUTIONS.stream().map(key -> texts.say("sheet.caution." + key)).toList();
    }
}
