package org.cupwright.app.answers;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.green.AssessGreen;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Ground;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.ConcessionStep;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.judging.GreenJudgement;
import org.cupwright.holelocation.judging.GreenJudgement.Shares;
import org.cupwright.holelocation.judging.SlopeSpread;
import org.cupwright.policy.EnumNames;
import org.cupwright.roll.Roll;

/** A judged green in words. */
public record GreenText(Texts texts, Lines lines) {
    public GreenText(Texts texts) {
        this(texts, new Lines(texts));
    }

    /** The position that was asked about by every rule; else the whole green, and where to begin with. */
    public Lines lines(AssessGreen.Answer answer) {
        GreenJudgement green = answer.green().judgement();
        title(answer.day(), answer.hole());
        if (answer.asked().isPresent()) {
            lines.gap();
            judgements(answer.day()).full(answer.asked().get(), lines);
            return lines;
        }
        says(green);
        lines.gap();
        if (answer.best().isEmpty()) {
            return lines.wrapped("", nowhere(green));
        }
        lines.say("assess.best");
        answer.best().forEach(position -> judgements(answer.day()).row(new Line.Cell("  ", 0), position, lines));
        return lines;
    }

    /** What stands on the picture of a green: which, where, the day and the speed. */
    public String pictureTitle(CourseDay day, Hole hole) {
        return texts.say(
                "map.picture.title",
                hole.id(),
                day.course().name(),
                texts.day(day.date()),
                new DayText(texts).speed(day));
    }

    /** Where a ball stopped, and how. */
    public Lines rolled(Roll roll, MapPoint start) {
        MapPoint stop = roll.stop();
        String away = texts.length(stop.distanceMetres(start));
        lines.say("roll." + EnumNames.lowerCamel(roll.end()), texts.number(roll.seconds(), 1));
        lines.say("roll.where", texts.coordinate(stop.east()), texts.coordinate(stop.north()), away);
        return lines.say("roll.path", texts.length(roll.pathGroundMetres()));
    }

    private JudgementText judgements(CourseDay day) {
        return new JudgementText(texts, day.policy().get(PlacePolicy.PACE_METRES));
    }

    private void title(CourseDay day, Hole hole) {
        String title = texts.say("assess.title", hole.id(), day.course().name(), texts.day(day.date()));
        lines.line(title + " · " + new DayText(texts).speed(day));
    }

    /** How large it is, what is known of it, how much of it is good, and which rules were set aside. */
    private void says(GreenJudgement green) {
        Ground ground = green.green().ground();
        lines.line(texts.say("assess.area", texts.area(green.areaSquareMetres())) + " · "
                + texts.say("restsOn." + EnumNames.lowerCamel(ground.restsOn())));
        lines.line(shares(green.shares()));
        green.slopePercent().ifPresent(slopes -> lines.line(slopes(slopes)));
        if (Double.isFinite(ground.surveySigmaMetres())) {
            lines.say("assess.sigma", texts.length(ground.surveySigmaMetres()));
        }
        green.concessions().forEach(step -> lines.line(setAside(step)));
    }

    /** The rule that was set aside, and how much ground that gained. */
    String setAside(ConcessionStep step) {
        return texts.say("concession", ruleName(step.concession().rule()), texts.area(step.areaGained()));
    }

    /** That nowhere is good, and by which rules. */
    private String nowhere(GreenJudgement green) {
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
