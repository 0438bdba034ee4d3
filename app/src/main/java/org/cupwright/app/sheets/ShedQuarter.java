package org.cupwright.app.sheets;

import java.util.Arrays;
import java.util.List;
import org.cupwright.app.desk.paper.PaperPolicy;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;
import org.cupwright.policy.Policy;

/** The card's quarters about the whole round: before it begins, the hand work in short, room for notes. */
record ShedQuarter(DaySheet day, Texts texts, Page page) {
    private static final List<String> TICKS = List.of(
            "cutter", "mallet", "puller", "setter", "soil", "water", "rag", "knife", "ballMarkTool", "pipe", "flags");
    private static final List<String> HAND_WORK =
            List.of("look", "cut", "old", "cup", "plug", "finish", "flag", "last");
    private static final List<String> CAUTIONS =
            List.of("blade", "play", "thunder", "frost", "spray", "heat", "lifting", "alone", "local");
    private static final int NOTE_LINES = 14;

    void before(List<String> first) {
        page.heading().say("h1", "title", "sheet.card.title");
        first(first);
        page.element("p", "state", day.state(texts) + " · " + DaySheet.speed(day.speed(), texts));
        page.say("h2", "load", "sheet.card.load");
        page.element("p", "load", String.join(" · ", new Flags(texts, day.policy()).load(day)));
        page.say("h2", "ticks", "sheet.card.before").open("div", "ticks");
        ticks().forEach(tick -> page.open("div", "tick").box(tick).close("div"));
        page.close("div").say("h2", "here", "sheet.card.here");
        answers();
    }

    /** A box with what has to be known first. */
    void first(List<String> notices) {
        page.open("div", "first").say("h2", "know", "first.title");
        notices.forEach(this::notice);
        page.close("div");
    }

    /** A time is not torn apart at a line's end. */
    private void notice(String notice) {
        page.open("p", "notice");
        for (String word : notice.split(" ", -1)) {
            page.element("span", word.matches(".*\\d:\\d\\d.*") ? "whole" : "word", word)
                    .text(" ");
        }
        page.close("p");
    }

    /** The notices that the first quarter has no room for. */
    void firstGoesOn(List<String> notices) {
        page.heading();
        first(notices);
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
    private void answers() {
        Policy policy = day.policy();
        answer("sheet.convention." + EnumNames.lowerCamel(day.convention()));
        answer("sheet.card.plugs");
        answer(policy.get(PaperPolicy.MOWN_FIRST) ? "sheet.card.mownFirst" : "sheet.card.mownLater");
        answer(policy.get(PaperPolicy.TWO_PIECE) ? "sheet.card.twoPiece" : "sheet.card.onePiece");
        answer(policy.get(PaperPolicy.WHITE_RIM) ? "sheet.card.whiteRim" : "sheet.card.plainRim");
        answer("sheet.card.ballMarks", new CourseText(texts, policy).of(PaperPolicy.BALL_MARKS));
        String nursery = policy.get(PaperPolicy.NURSERY);
        if (!nursery.isBlank()) {
            answer("sheet.card.nursery", nursery);
        }
        String ring = policy.get(PaperPolicy.RING);
        if (ring.isBlank()) {
            page.open("p", "answer").text(texts.say("sheet.card.ringBlank"));
            page.line("long").close("p");
        } else {
            answer("sheet.card.ring", ring);
        }
    }

    private void answer(String key, Object... plain) {
        page.say("p", "answer", key, plain);
    }

    void handWork() {
        page.heading();
        list("work", HAND_WORK, "sheet.work.", "ol");
        list("cautions", CAUTIONS, "sheet.caution.", "ul");
    }

    private void list(String cssClass, List<String> keys, String prefix, String tag) {
        page.say("h2", cssClass, prefix + "title").open(tag, "list");
        keys.forEach(key -> page.say("li", "item", prefix + key));
        page.close(tag);
    }

    void notes() {
        page.heading().say("h2", "notes", "sheet.card.notes");
        for (int i = 0; i < NOTE_LINES; i++) {
            page.element("div", "ruled", "");
        }
    }
}
