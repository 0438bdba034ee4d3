package org.cupwright.app.answers;

import java.util.List;
import java.util.stream.Stream;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;
import org.cupwright.rotation.shortage.Shortage;
import org.cupwright.rotation.shortage.Shortage.Cause;
import org.cupwright.rotation.shortage.Shortage.Proof;
import org.cupwright.rotation.shortage.Shortage.Step;

/** Why some holes of many days are on resting ground, how that is known, and what setting something aside would buy. */
public record ShortageText(Texts texts) {
    /** A heading and a paragraph for each green; nothing where all rules were kept to. */
    Lines after(List<Shortage> shortages, Lines lines) {
        if (!shortages.isEmpty()) {
            lines.wrapped("", texts.say("weeks.short.title"));
        }
        for (Shortage shortage : shortages) {
            lines.wrapped("  ", String.join(" ", says(shortage)));
        }
        return lines;
    }

    /** One green's sentences: the cause, how it is known, what would help. */
    public List<String> says(Shortage shortage) {
        return Stream.concat(
                        Stream.of(cause(shortage), proof(shortage)),
                        shortage.steps().stream().map(this::step))
                .filter(sentence -> !sentence.isEmpty())
                .toList();
    }

    private String cause(Shortage shortage) {
        return texts.say(
                "weeks.short." + EnumNames.lowerCamel(shortage.cause()),
                String.join(", ", shortage.holes()),
                texts.weekday(shortage.first()),
                texts.weekday(shortage.last()),
                shortage.wanted(),
                shortage.room(),
                shortage.fit(),
                shortage.restDays());
    }

    /** That something was shown its cause says itself, and what was fixed is plain. */
    private String proof(Shortage shortage) {
        return shortage.proof() != Proof.SHOWN && shortage.cause() != Cause.FIXED
                ? texts.say(
                        "weeks.short." + EnumNames.lowerCamel(shortage.proof()), shortage.atLeast(), shortage.planned())
                : "";
    }

    private String step(Step step) {
        return texts.say("weeks.short." + EnumNames.lowerCamel(step.easing()), step.restDays(), step.holesSetAside());
    }
}
