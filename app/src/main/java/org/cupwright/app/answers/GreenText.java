package org.cupwright.app.answers;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.green.Ground;
import org.cupwright.holelocation.ConcessionStep;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.judging.GreenJudgement;
import org.cupwright.holelocation.judging.GreenJudgement.Shares;
import org.cupwright.holelocation.judging.SlopeSpread;
import org.cupwright.policy.EnumNames;

/** A judged green in words. */
public final class GreenText {
    private final Texts texts;

    public GreenText(Texts texts) {
        this.texts = texts;
    }

    public String title(CourseDay day, Hole hole) {
        return texts.say("assess.title", hole.id(), day.course().name(), texts.day(day.date())) + " · "
                + new DayText(texts).speed(day);
    }

    /** How large it is, what is known of it, how much of it is good, and which rules were set aside. */
    public List<String> says(GreenJudgement green) {
        Ground ground = green.green().ground();
        List<String> said = new ArrayList<>();
        said.add(texts.say("assess.area", texts.area(green.areaSquareMetres())) + " · "
                + texts.say("restsOn." + EnumNames.lowerCamel(ground.restsOn())));
        said.add(shares(green.shares()));
        green.slopePercent().ifPresent(slopes -> said.add(slopes(slopes)));
        if (Double.isFinite(ground.surveySigmaMetres())) {
            said.add(texts.say("assess.sigma", texts.length(ground.surveySigmaMetres())));
        }
        green.concessions().forEach(step -> said.add(setAside(step)));
        return said;
    }

    /** The rule that was set aside, and how much ground that gained. */
    public String setAside(ConcessionStep step) {
        return texts.say("concession", ruleName(step.concession().rule()), texts.area(step.areaGained()));
    }

    /** That nowhere is good, and by which rules. */
    public String nowhere(GreenJudgement green) {
        String why = green.failing().stream().map(this::ruleName).collect(Collectors.joining(", "));
        return texts.say("assess.nothing", why);
    }

    private String ruleName(RuleId rule) {
        return texts.say("rule." + rule.id());
    }

    private String shares(Shares shares) {
        List<String> parts = new ArrayList<>();
        addShare(parts, shares.pass(), "verdict.pass");
        addShare(parts, shares.caution(), "verdict.caution");
        addShare(parts, shares.fail(), "verdict.fail");
        addShare(parts, shares.notSurveyed(), "verdict.notSurveyed");
        return String.join(" · ", parts);
    }

    private void addShare(List<String> parts, double share, String key) {
        if (share > 0) {
            parts.add(texts.say(key) + " " + texts.number(100 * share, share < 0.0095 ? 1 : 0) + " %");
        }
    }

    private String slopes(SlopeSpread slopes) {
        return texts.say(
                "assess.slopes", texts.slope(slopes.p5()), texts.slope(slopes.median()), texts.slope(slopes.p95()));
    }
}
