package org.cupwright.app.answers;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.RestsOn;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.EnumNames;
import org.cupwright.units.Paces;

/** A judged position in words. */
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
    void row(Line.Cell head, JudgedPosition position, Lines lines) {
        List<Line.Cell> cells = List.of(
                head,
                Line.left(where(position), 39),
                Line.left(within(position).orElse(""), 25),
                Line.left(plays(position.judgement()).orElse(""), 8));
        lines.row(cells, verdict(position.judgement()));
    }

    /** Errors of slope are said down to this, points (our choice: what a level shows). */
    static final double LEAST_SAID = 0.1;

    /** The whole of it: a line of summary and a line for each rule. */
    void full(JudgedPosition position, Lines lines) {
        ToldPosition told = told(position);
        lines.line(told.where()).line(told.summary()).gap();
        for (ToldPosition.Rule rule : told.rules()) {
            lines.wrapped(List.of(new Line.Cell("  ", 0), Line.left(rule.outcome(), 13)), rule.says());
            rule.leans().ifPresent(leans -> lines.row(List.of(Line.left("", 15)), leans));
        }
    }

    /** The whole of it in words, piece by piece. */
    public ToldPosition told(JudgedPosition position) {
        Judgement judgement = position.judgement();
        return new ToldPosition(
                where(position),
                EnumNames.lowerCamel(judgement.verdict()),
                texts.say("verdict." + verdictName(judgement)),
                within(position),
                plays(judgement).map(plays -> texts.say("plays", plays)),
                texts.say("restsOn." + EnumNames.lowerCamel(judgement.restsOn())),
                judgement.rules().stream().map(rule -> told(rule, judgement)).toList());
    }

    private ToldPosition.Rule told(RuleResult rule, Judgement judgement) {
        boolean aside = judgement.setAside().contains(rule.rule());
        String outcome = EnumNames.lowerCamel(rule.outcome());
        return new ToldPosition.Rule(
                texts.say("rule." + rule.rule().id()),
                aside ? "setAside" : outcome,
                aside ? texts.say("setAside") : texts.say("outcome." + outcome),
                says(rule),
                leans(rule));
    }

    /** What a rule says, and by how much it may err. */
    private String says(RuleResult rule) {
        String said = texts.say(rule.says());
        OptionalDouble error = rule.standardError();
        return error.isEmpty() ? said : said + " " + error(error.getAsDouble(), rule.unit());
    }

    /** No slope is known so well that its error is nothing: below a twentieth it is "less than a tenth". */
    private String error(double error, String unit) {
        if (unit.equals("m") || unit.equals("mm")) {
            return texts.say("error", texts.length(unit.equals("m") ? error : error / 1000));
        }
        String percent = unit.equals("%") ? " %" : "";
        return error < LEAST_SAID / 2
                ? texts.say("error.less", texts.number(LEAST_SAID, 1) + percent)
                : texts.say("error", texts.number(error, 2) + percent);
    }

    private Optional<String> leans(RuleResult rule) {
        return rule.leans().map(leans -> texts.say("leans." + EnumNames.lowerCamel(leans)));
    }

    /** The verdict, and beside it what nobody could check. */
    public String verdict(Judgement judgement) {
        String word = texts.say("verdict." + verdictName(judgement));
        return judgement.restsOn() == RestsOn.OUTLINE ? word + ", " + texts.say("slopeNotChecked") : word;
    }

    /** A verdict's word: where nobody measured and a person speaks for the spot, being good is that person's word. */
    public static String verdictName(Judgement judgement) {
        boolean said =
                judgement.restsOn() == RestsOn.OUTLINE && judgement.verdict() == Verdict.PASS && judgement.vouchedFor();
        return said ? "saidToBeGood" : EnumNames.lowerCamel(judgement.verdict());
    }

    /** How far off is still good. */
    private Optional<String> within(JudgedPosition position) {
        OptionalDouble metres = position.goodWithinMetres();
        if (metres.isEmpty()) {
            return Optional.empty();
        }
        double paces = Paces.roundedDownToHalf(metres.getAsDouble(), paceMetres);
        return Optional.of(within(paces, position.judgement().verdict(), texts));
    }

    /** So far off it is as good as at the spot; what is to be used with care is not called good. */
    public static String within(double paces, Verdict verdict, Texts texts) {
        boolean good = verdict == Verdict.PASS;
        if (paces < 0.5) {
            return texts.say(good ? "goodJustThere" : "justThere");
        }
        return good ? texts.say("goodWithin", texts.paces(paces)) : texts.say("sameWithin", texts.paces(paces));
    }

    private Optional<String> plays(Judgement judgement) {
        return judgement.difficulty().rank().map(rank -> texts.say("difficulty." + EnumNames.lowerCamel(rank)));
    }
}
