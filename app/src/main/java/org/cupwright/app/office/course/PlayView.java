package org.cupwright.app.office.course;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.TypedHeading;
import org.cupwright.app.desk.ground.TurnPlay;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.HeadingWords;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;

/** From where a green is played to, in words. */
record PlayView(Texts texts) {
    /**
     * How it stands, and what may be typed.
     *
     * @param says the direction in words
     * @param degrees as it stands in the field; empty where nobody knows
     * @param winds words that may be typed instead
     */
    record Play(String says, String degrees, List<String> winds) {}

    Play of(Hole hole) {
        Optional<Long> degrees = hole.lineOfPlay().map(LineOfPlay::atGreen).map(TypedHeading::degrees);
        String says =
                degrees.map(turn -> texts.say("draw.play.is", turn)).orElseGet(() -> texts.say("draw.play.unknown"));
        return new Play(says, degrees.map(String::valueOf).orElse(""), new HeadingWords(texts).all());
    }

    /** What was changed. */
    String turned(TurnPlay.Answer turned) {
        String none = texts.say("draw.play.none");
        return texts.say(
                "draw.play.turned",
                String.join(", ", turned.holes()),
                turned.before().map(turn -> turn + "°").orElse(none),
                turned.after().map(turn -> turn + "°").orElse(none));
    }
}
