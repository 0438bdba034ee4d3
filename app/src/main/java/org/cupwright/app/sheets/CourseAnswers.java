package org.cupwright.app.sheets;

import java.util.Optional;
import org.cupwright.app.desk.paper.CutterKind;
import org.cupwright.app.desk.paper.PaperPolicy;
import org.cupwright.app.desk.paper.RimWhited;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.Policy;
import org.cupwright.policy.Setting;

/** What a course has decided about the hand work: as it decides how the work goes, and as it is told, one by one. */
public record CourseAnswers(Texts texts, Policy policy) {
    public boolean hammered() {
        return policy.get(PaperPolicy.CUTTER) == CutterKind.HAMMERED;
    }

    public boolean twoPieces() {
        return policy.get(PaperPolicy.TWO_PIECE);
    }

    public RimWhited rimWhited() {
        return policy.get(PaperPolicy.WHITE_RIM);
    }

    public String mown() {
        return texts.say(policy.get(PaperPolicy.MOWN_FIRST) ? "sheet.card.mownFirst" : "sheet.card.mownLater");
    }

    public String pieces() {
        return texts.say(twoPieces() ? "sheet.card.twoPiece" : "sheet.card.onePiece");
    }

    public String rim() {
        return texts.say(
                switch (rimWhited()) {
                    case NEVER -> "sheet.card.plainRim";
                    case ALWAYS -> "sheet.card.whiteRim";
                    case EVENTS -> "sheet.card.eventRim";
                });
    }

    public String ballMarks() {
        return texts.say("sheet.card.ballMarks", new CourseText(texts, policy).of(PaperPolicy.BALL_MARKS));
    }

    /** Where turf for repairs grows; empty where the course has not said, as are those below. */
    public Optional<String> nursery() {
        return said(PaperPolicy.NURSERY, "sheet.card.nursery");
    }

    /** Which soil goes under a plug. */
    public Optional<String> soil() {
        return said(PaperPolicy.SOIL, "sheet.card.soilHere");
    }

    /** Who sharpens the cutters. */
    public Optional<String> sharpens() {
        return said(PaperPolicy.SHARPENS, "sheet.card.sharpens");
    }

    private Optional<String> said(Setting<String> setting, String key) {
        return Optional.of(policy.get(setting)).filter(text -> !text.isBlank()).map(text -> texts.say(key, text));
    }
}
