package org.cupwright.app.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.answers.PositionText;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.RestsOn;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.EnumNames;
import org.cupwright.units.Paces;

/** A judged position in words: one row, or in full with every rule. */
public final class JudgementText {
    private final Texts texts;
    private final PositionText positions;
    private final double paceMetres;

    public JudgementText(Texts texts, double paceMetres) {
        this.texts = texts;
        this.positions = new PositionText(texts, paceMetres);
        this.paceMetres = paceMetres;
    }

    public String where(JudgedPosition position) {
        return positions.of(position);
    }

    /** One row of a list: where, how far off is still good, how it plays, the verdict. */
    public String row(JudgedPosition position) {
        return Layout.left(where(position), 39)
                + Layout.left(within(position).orElse(""), 22)
                + Layout.left(plays(position.judgement()).orElse(""), 8)
                + verdict(position.judgement());
    }

    /** The whole of it: a line of summary and a line for each rule. */
    public List<String> full(JudgedPosition position) {
        Judgement judgement = position.judgement();
        List<String> summary = new ArrayList<>();
        summary.add(texts.say(verdictKey(judgement)));
        within(position).ifPresent(summary::add);
        plays(judgement).ifPresent(plays -> summary.add(texts.say("plays", plays)));
        summary.add(texts.say("restsOn." + EnumNames.lowerCamel(judgement.restsOn())));
        List<String> lines = new ArrayList<>();
        lines.add(where(position));
        lines.add(String.join(" · ", summary));
        lines.add("");
        judgement.rules().forEach(rule -> lines.addAll(rule(rule, judgement)));
        return lines;
    }

    private List<String> rule(RuleResult rule, Judgement judgement) {
        boolean aside = judgement.setAside().contains(rule.rule());
        String outcome = aside ? texts.say("setAside") : texts.say("outcome." + EnumNames.lowerCamel(rule.outcome()));
        List<String> text = Layout.wrapped(" ".repeat(15), texts.say(rule.says()) + error(rule));
        List<String> lines = new ArrayList<>();
        lines.add("  " + Layout.left(outcome, 13) + text.get(0).strip());
        lines.addAll(text.subList(1, text.size()));
        rule.leans().ifPresent(leans -> lines.add(" ".repeat(15) + texts.say("leans." + EnumNames.lowerCamel(leans))));
        return lines;
    }

    private String error(RuleResult rule) {
        if (rule.standardError().isEmpty()) {
            return "";
        }
        double error = rule.standardError().getAsDouble();
        String shown = switch (rule.unit()) {
            case "m" -> texts.length(error);
            case "mm" -> texts.length(error / 1000);
            case "%" -> texts.number(error, 2) + " %";
            default -> texts.number(error, 2);
        };
        return " " + texts.say("error", shown);
    }

    /** The verdict, and beside it what nobody could check. */
    public String verdict(Judgement judgement) {
        String word = texts.say(verdictKey(judgement));
        return judgement.restsOn() == RestsOn.OUTLINE ? word + ", " + texts.say("slopeNotChecked") : word;
    }

    /** Where nobody measured and a person speaks for the spot, its being good is that person's word. */
    private static String verdictKey(Judgement judgement) {
        boolean said =
                judgement.restsOn() == RestsOn.OUTLINE && judgement.verdict() == Verdict.PASS && judgement.vouchedFor();
        return said ? "verdict.saidToBeGood" : "verdict." + EnumNames.lowerCamel(judgement.verdict());
    }

    private Optional<String> within(JudgedPosition position) {
        return position.goodWithinMetres().isPresent()
                ? Optional.of(within(position.goodWithinMetres().getAsDouble()))
                : Optional.empty();
    }

    /** In half paces, rounded down: a promise is not rounded up. */
    private String within(double metres) {
        double paces = Math.floor(2 * Paces.fromMetres(metres, paceMetres) + 1e-9) / 2;
        return paces == 0 ? texts.say("goodJustThere") : texts.say("goodWithin", texts.paces(paces));
    }

    private Optional<String> plays(Judgement judgement) {
        return judgement.difficulty().rank().map(rank -> texts.say("difficulty." + EnumNames.lowerCamel(rank)));
    }
}
