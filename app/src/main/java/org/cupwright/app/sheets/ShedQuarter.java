package org.cupwright.app.sheets;

import java.util.Arrays;
import java.util.List;
import org.cupwright.app.desk.paper.PaperPolicy;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;

/** The card's quarters about the whole round: before it begins, the hand work in short, room for notes. */
final class ShedQuarter {
    private static final List<String> TICKS = List.of(
            "cutter", "mallet", "puller", "setter", "soil", "water", "rag", "knife", "ballMarkTool", "pipe", "flags");
    private static final List<String> HAND_WORK =
            List.of("look", "cut", "old", "cup", "plug", "finish", "flag", "last");
    private static final List<String> CAUTIONS =
            List.of("blade", "play", "thunder", "frost", "spray", "heat", "lifting", "alone", "local");
    private static final int NOTE_LINES = 14;

    private final DaySheet day;
    private final Texts texts;

    ShedQuarter(DaySheet day, Texts texts) {
        this.day = day;
        this.texts = texts;
    }

    void before(Page page, Xhtml out) {
        page.heading(out);
        out.element("h1", "title", texts.say("sheet.card.title"));
        out.element("p", "state", page.state(day) + " · " + page.speed(day.speedFeet()));
        out.element("h2", "load", texts.say("sheet.card.load"));
        out.element("p", "load", String.join(" · ", new Flags(texts, day.policy()).load(day)));
        out.element("h2", "ticks", texts.say("sheet.card.before"));
        out.open("div", "ticks");
        ticks().forEach(tick -> out.open("div", "tick").box(tick).close("div"));
        out.close("div");
        out.element("h2", "here", texts.say("sheet.card.here"));
        answers(out);
    }

    private List<String> ticks() {
        String own = day.policy().get(PaperPolicy.TICK_LIST);
        return own.isBlank()
                ? TICKS.stream().map(tick -> texts.say("sheet.tick." + tick)).toList()
                : Arrays.stream(own.split(",", -1))
                        .map(String::strip)
                        .filter(tick -> !tick.isEmpty())
                        .toList();
    }

    /** What the course decided, where it is needed. */
    private void answers(Xhtml out) {
        answer(texts.say("sheet.convention." + EnumNames.lowerCamel(day.convention())), out);
        answer(texts.say("sheet.card.plugs"), out);
        answer(
                texts.say(yesNo(
                        day.policy().get(PaperPolicy.MOWN_FIRST), "sheet.card.mownFirst", "sheet.card.mownLater")),
                out);
        answer(
                texts.say(yesNo(day.policy().get(PaperPolicy.TWO_PIECE), "sheet.card.twoPiece", "sheet.card.onePiece")),
                out);
        answer(
                texts.say(yesNo(day.policy().get(PaperPolicy.WHITE_RIM), "sheet.card.whiteRim", "sheet.card.plainRim")),
                out);
        answer(texts.say("sheet.card.ballMarks", day.policy().get(PaperPolicy.BALL_MARKS)), out);
        String nursery = day.policy().get(PaperPolicy.NURSERY);
        if (!nursery.isBlank()) {
            answer(texts.say("sheet.card.nursery", nursery), out);
        }
        String ring = day.policy().get(PaperPolicy.RING);
        if (ring.isBlank()) {
            out.open("p", "answer")
                    .text(texts.say("sheet.card.ringBlank"))
                    .line("long")
                    .close("p");
        } else {
            answer(texts.say("sheet.card.ring", ring), out);
        }
    }

    private static String yesNo(boolean yes, String ifYes, String ifNo) {
        return yes ? ifYes : ifNo;
    }

    private void answer(String text, Xhtml out) {
        out.element("p", "answer", text);
    }

    void handWork(Page page, Xhtml out) {
        page.heading(out);
        out.element("h2", "work", texts.say("sheet.work.title"));
        list("sheet.work.", HAND_WORK, "ol", out);
        out.element("h2", "cautions", texts.say("sheet.caution.title"));
        list("sheet.caution.", CAUTIONS, "ul", out);
    }

    private void list(String prefix, List<String> keys, String tag, Xhtml out) {
        out.open(tag, "list");
        keys.forEach(key -> out.element("li", "item", texts.say(prefix + key)));
        out.close(tag);
    }

    void notes(Page page, Xhtml out) {
        page.heading(out);
        out.element("h2", "notes", texts.say("sheet.card.notes"));
        for (int i = 0; i < NOTE_LINES; i++) {
            out.open("div", "ruled").close("div");
        }
    }
}
