package org.cupwright.app.sheets;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.round.RoundOfDay;
import org.cupwright.app.texts.Texts;
import org.cupwright.message.Message.Said;

/** The card's quarters about the whole round: before it begins, the hand work in short, room for notes. */
record ShedQuarter(DaySheet day, Texts texts, Page page) {
    private static final int NOTE_LINES = 14;

    void before(List<String> first) {
        page.heading().say("h1", "title", "sheet.card.title");
        first(first);
        page.element("p", "state", day.state(texts) + " · " + DaySheet.speed(day.speed(), texts));
        round().ifPresent(says -> page.element("p", "state", says));
        page.say("h2", "load", "sheet.card.load");
        page.element("p", "load", String.join(" · ", new Flags(texts, day.policy()).load(day)));
        page.say("h2", "ticks", "sheet.card.before").open("div", "ticks");
        words().ticks().forEach(tick -> page.open("div", "tick").box(tick).close("div"));
        page.close("div").say("h2", "here", "sheet.card.here");
        answers();
    }

    /** How play begins and who has which holes; empty where there is nothing to tell of it. */
    Optional<String> round() {
        return day.round().filter(RoundOfDay::tells).map(round -> texts.show(new Said(round.says())));
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

    /** What the course decided, where it is needed. */
    private void answers() {
        words().answers().forEach(answer -> page.element("p", "answer", answer));
        Optional<String> ring = words().ring();
        if (ring.isEmpty()) {
            page.open("p", "answer").text(texts.say("sheet.card.ringBlank"));
            page.line("long").close("p");
        } else {
            page.element("p", "answer", ring.get());
        }
    }

    private ShedWords words() {
        return new ShedWords(day, texts);
    }

    void handWork() {
        page.heading();
        list("work", words().handWork(), "sheet.work.title", "ol");
        list("cautions", words().cautions(), "sheet.caution.title", "ul");
    }

    private void list(String cssClass, List<String> items, String title, String tag) {
        page.say("h2", cssClass, title).open(tag, "list");
        items.forEach(item -> page.element("li", "item", item));
        page.close(tag);
    }

    void notes() {
        page.heading().say("h2", "notes", "sheet.card.notes");
        for (int i = 0; i < NOTE_LINES; i++) {
            page.element("div", "ruled", "");
        }
    }
}
