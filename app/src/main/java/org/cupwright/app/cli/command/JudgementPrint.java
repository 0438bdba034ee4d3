package org.cupwright.app.cli.command;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.JudgementText;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.texts.Texts;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.RuleResult;

/** A judged position on a terminal: one row, or in full with every rule. */
public final class JudgementPrint {
    private final JudgementText words;

    public JudgementPrint(Texts texts, double paceMetres) {
        this.words = new JudgementText(texts, paceMetres);
    }

    public String where(JudgedPosition position) {
        return words.where(position);
    }

    /** One row of a list: where, how far off is still good, how it plays, the verdict. */
    public String row(JudgedPosition position) {
        return Layout.left(where(position), 39)
                + Layout.left(words.within(position).orElse(""), 22)
                + Layout.left(words.plays(position.judgement()).orElse(""), 8)
                + words.verdict(position.judgement());
    }

    /** The whole of it: a line of summary and a line for each rule. */
    public List<String> full(JudgedPosition position) {
        Judgement judgement = position.judgement();
        List<String> lines = new ArrayList<>(List.of(where(position), words.summary(position), ""));
        for (RuleResult rule : judgement.rules()) {
            String outcome = "  " + Layout.left(words.outcome(rule, judgement), 13);
            lines.addAll(Layout.hanging(15, outcome, words.says(rule)));
            words.leans(rule).ifPresent(leans -> lines.add(" ".repeat(15) + leans));
        }
        return lines;
    }
}
