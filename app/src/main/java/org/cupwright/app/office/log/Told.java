package org.cupwright.app.office.log;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.FactText;
import org.cupwright.app.desk.entry.CorrectFact;
import org.cupwright.app.desk.entry.RecordFact;
import org.cupwright.app.texts.Texts;
import org.cupwright.cupchange.Fact;
import org.cupwright.message.Message;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Tells on the next page what was kept. */
record Told(Texts texts, RedirectAttributes next) {
    void kept(RecordFact.Answer answer) {
        FactText words = new FactText(texts, answer.course(), answer.policy());
        List<String> said = new ArrayList<>();
        answer.kept().forEach(fact -> said.add(texts.say("log.page.kept", what(words, fact))));
        tell(said, answer.remarks());
    }

    void corrected(CorrectFact.Answer answer) {
        FactText words = new FactText(texts, answer.course(), answer.policy());
        String said = answer.now()
                .map(now -> texts.say("log.page.corrected", what(words, now)))
                .orElseGet(() -> texts.say("log.page.withdrawn", what(words, answer.was())));
        tell(List.of(said), answer.remarks());
    }

    private String what(FactText words, Fact fact) {
        String hole = fact.hole()
                .map(id -> texts.say("log.page.hole.one", id) + " · ")
                .orElse("");
        return hole + words.says(fact);
    }

    void sentBefore() {
        tell(List.of(texts.say("log.page.sentBefore")), List.of());
    }

    private void tell(List<String> said, List<Message> remarks) {
        List<String> all = new ArrayList<>(said);
        remarks.stream().map(texts::say).forEach(all::add);
        next.addFlashAttribute("said", all);
    }
}
