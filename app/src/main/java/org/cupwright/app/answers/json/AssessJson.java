package org.cupwright.app.answers.json;

import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.green.AssessGreen;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.judging.GreenJudgement;
import org.cupwright.policy.EnumNames;
import tools.jackson.databind.JsonNode;

/** A judged position or green as scripts read it. */
public final class AssessJson {
    private final CourseDay day;
    private final PlaceShapes places;
    private final Shapes shapes;

    public AssessJson(CourseDay day, Texts texts) {
        this.day = day;
        this.places = new PlaceShapes(day.course(), day.policy());
        this.shapes = new Shapes(texts).as(JudgedPosition.class, places::listed);
    }

    public JsonNode of(AssessGreen.Answer answer) {
        return answer.asked().map(asked -> position(answer, asked)).orElseGet(() -> green(answer));
    }

    private JsonNode position(AssessGreen.Answer answer, JudgedPosition asked) {
        Judgement judgement = asked.judgement();
        return shapes.tree(of(answer.hole())
                .with(places.judged(asked))
                .with("rules", judgement.rules())
                .with("slopeError", answer.slopeError().map(SlopeErrorShape::of))
                .with("setAside", judgement.setAside())
                .with("difficulty", judgement.difficulty())
                .with(conditions()));
    }

    private JsonNode green(AssessGreen.Answer answer) {
        GreenJudgement green = answer.green().judgement();
        double sigma = green.green().ground().surveySigmaMetres();
        return shapes.tree(of(green.green().hole())
                .with("areaSquareMetres", green.areaSquareMetres())
                .with("shares", green.shares())
                .with("slopePercent", green.slopePercent().filter(slopes -> Double.isFinite(sigma)))
                .with("surveySigmaMetres", sigma)
                .with("rules", spots(green))
                .with("best", answer.best())
                .with(
                        "setAside",
                        green.concessions().stream()
                                .map(step -> step.concession().rule())
                                .distinct())
                .with(conditions()));
    }

    /** How many of the green's spots each rule answered how. */
    private static Shape spots(GreenJudgement green) {
        Shape rules = new Shape();
        for (RuleId rule : RuleId.values()) {
            Shape counts = new Shape();
            for (Outcome outcome : Outcome.values()) {
                counts.with(EnumNames.lowerCamel(outcome), green.count(rule, outcome));
            }
            rules.with(rule.id(), counts);
        }
        return rules;
    }

    private Shape of(Hole hole) {
        return new Shape().with("course", day.course().id()).with("hole", hole.id());
    }

    private Shape conditions() {
        return new Shape()
                .with("date", day.date())
                .with("speedFeet", day.fastest().feet())
                .with("rain", day.rain().expected());
    }
}
