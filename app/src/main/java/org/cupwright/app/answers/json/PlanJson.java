package org.cupwright.app.answers.json;

import java.nio.file.Path;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.cupwright.app.answers.FirstText;
import org.cupwright.app.answers.ReasonText;
import org.cupwright.app.answers.ShortageText;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.first.Notice;
import org.cupwright.app.desk.plan.CutSoFar;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.desk.plan.ExplainHole;
import org.cupwright.app.desk.plan.ExplainHole.Planned;
import org.cupwright.app.desk.plan.ExplainHole.Told;
import org.cupwright.app.desk.plan.PlanDay;
import org.cupwright.app.desk.plan.PlanWeeks;
import org.cupwright.app.desk.plan.PublishPlan;
import org.cupwright.app.storage.DayRain;
import org.cupwright.app.storage.DaySpeed;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CupWork.LeftInOldHole;
import org.cupwright.cupchange.Fact;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.Judgement;
import org.cupwright.policy.EnumNames;
import org.cupwright.rotation.Totals;
import org.cupwright.rotation.counting.Parts;
import org.cupwright.rotation.shortage.Shortage;
import org.cupwright.rotation.weeks.WeeksBounds;
import org.cupwright.turf.weather.WeatherBasis;
import tools.jackson.databind.JsonNode;

/** A day's plan, and why a hole is where it is, as scripts read it. */
public final class PlanJson {
    private final PlaceShapes places;
    private final Shapes shapes;
    private final ReasonText reasons;

    public PlanJson(CourseDay day, Texts texts) {
        this.places = new PlaceShapes(day.course(), day.policy());
        this.reasons = new ReasonText(texts, day.policy().get(PlacePolicy.PACE_METRES));
        FirstText first = new FirstText(texts, day);
        this.shapes = new Shapes(texts)
                .as(Notice.class, notice -> notice(notice, first))
                .as(StoredHole.class, this::hole)
                .as(Shortage.class, shortage -> shortage(shortage, new ShortageText(texts)))
                .as(Shortage.Step.class, PlanJson::step)
                .as(
                        StoredHole.Other.class,
                        other -> places.listed(other.position()).with("whyNot", other.whyNot()));
    }

    public JsonNode plan(PlanDay.Answer answer) {
        StoredPlan plan = answer.plan();
        return shapes.tree(plans(List.of(plan), List.of(day(plan, answer.first().all(), answer.weather()))));
    }

    /** Many days; what has to be known first is said of the first of them. */
    public JsonNode weeks(PlanWeeks.Answer answer) {
        List<Shape> days = new ArrayList<>();
        for (int day = 0; day < answer.plans().size(); day++) {
            List<Notice> first = day == 0 ? answer.first().all() : List.of();
            days.add(day(answer.plans().get(day), first, answer.weather().get(day)));
        }
        Shape all = plans(answer.plans(), days)
                .with("stopped", answer.stopped())
                .with("ceilingSeconds", answer.found().ceiling().map(time -> time.toMillis() / 1000.0))
                .with("shortages", answer.found().shortages())
                .with("leastOfAll", leastOfAll(answer.found().bounds()));
        return shapes.tree(all);
    }

    /** What no plan of the days falls below. */
    private static Shape leastOfAll(WeeksBounds bounds) {
        Map<String, Double> terms = new TreeMap<>();
        bounds.terms().forEach((term, value) -> terms.put(EnumNames.lowerCamel(term), value));
        return new Shape()
                .with("holesSetAside", bounds.holesSetAside())
                .with("thirdsOff", bounds.thirdsOff())
                .with("terms", terms);
    }

    private static Shape shortage(Shortage shortage, ShortageText text) {
        return new Shape()
                .with("cause", shortage.cause())
                .with("holes", shortage.holes())
                .with("first", shortage.first())
                .with("last", shortage.last())
                .with("wanted", shortage.wanted())
                .with("roomAtMost", shortage.room())
                .with("fit", shortage.fit())
                .with("restDays", shortage.restDays())
                .with("holesSetAside", shortage.planned())
                .with("atLeast", shortage.atLeast())
                .with("proof", shortage.proof())
                .with("steps", shortage.steps())
                .with("says", String.join(" ", text.says(shortage)));
    }

    private static Shape step(Shortage.Step step) {
        return new Shape()
                .with("setAside", step.easing())
                .with("restDays", step.restDays())
                .with("holesSetAside", step.holesSetAside());
    }

    /** What the days fall short of is told of all together. */
    private static Shape plans(List<StoredPlan> plans, List<Shape> days) {
        StoredPlan first = plans.get(0);
        return new Shape()
                .with("course", first.courseId())
                .with("seed", first.basis().seed())
                .with("days", days)
                .with("terms", sum(plans, StoredPlan::terms))
                .with("bounds", sum(plans, StoredPlan::bounds));
    }

    private static Map<String, Double> sum(List<StoredPlan> plans, Function<StoredPlan, Map<String, Double>> what) {
        Map<String, Double> sum = new TreeMap<>();
        plans.forEach(plan -> what.apply(plan).forEach((term, value) -> sum.merge(term, value, Double::sum)));
        return sum;
    }

    private static Shape day(StoredPlan plan, List<Notice> first, WeatherBasis weather) {
        return new Shape()
                .with("date", plan.date())
                .with("state", plan.state())
                .with("knowFirst", first)
                .with("speedFeet", plan.basis().speedFeet())
                .with("speedFrom", speedFrom(plan.basis().daySpeed()))
                .with("rain", plan.basis().rain())
                .with("rainFrom", plan.basis().dayRain())
                .with("weatherBasis", weather)
                .with("scheme", plan.basis().scheme())
                .with("spotsAreSuggestions", plan.leavesTheSpots())
                .with("holes", plan.holes())
                .with("totals", totals(plan.totals()))
                .with("findings", plan.findings());
    }

    private static Shape notice(Notice notice, FirstText first) {
        return new Shape()
                .with("kind", notice.kind())
                .with("hole", notice.hole())
                .with("says", first.says(notice))
                .with("east", notice.place().map(MapPoint::east))
                .with("north", notice.place().map(MapPoint::north));
    }

    /** How a plan stands now. */
    public static JsonNode published(PublishPlan.Answer answer, Texts texts) {
        return new Shapes(texts).tree(stands(answer.plan()).with("changed", answer.changed()));
    }

    /** Which files a plan's paper was written to, and how far it had been carried out. */
    public static JsonNode paper(DayPaper paper, List<Path> files, Texts texts) {
        CutSoFar soFar = paper.soFar();
        return new Shapes(texts)
                .tree(stands(paper.plan())
                        .with(
                                "asCutAt",
                                soFar.last().filter(time -> soFar.all()).map(LocalTime::toString))
                        .with("cut", soFar.holes())
                        .with("files", files));
    }

    private static Shape stands(StoredPlan plan) {
        return new Shape()
                .with("course", plan.courseId())
                .with("date", plan.date())
                .with("state", plan.state());
    }

    private Shape hole(StoredHole hole) {
        Judgement judgement = hole.position().judgement();
        return new Shape()
                .with("hole", hole.hole())
                .with(places.judged(hole.position()))
                .with("difficulty", judgement.difficulty())
                .with("setAside", judgement.setAside())
                .with("reasons", reasons.all(hole))
                .with("askedBy", hole.askedBy())
                .with("staysSince", hole.since())
                .with("area", hole.area());
    }

    private static Shape totals(Totals totals) {
        return new Shape()
                .with("holes", totals.holes())
                .with("thirds", parts(totals.thirds(), "front", "middle", "back"))
                .with("laterals", parts(totals.laterals(), "left", "centre", "right"))
                .with("difficulties", parts(totals.difficulties(), "easier", "medium", "harder"));
    }

    private static Shape parts(Parts parts, String first, String second, String third) {
        return new Shape()
                .with(first, parts.first())
                .with(second, parts.second())
                .with(third, parts.third());
    }

    public JsonNode why(ExplainHole.Answer answer) {
        Told told = answer.told();
        Optional<StoredPlan> plan = told.planned().map(Planned::plan);
        Optional<StoredHole> hole = told.planned().map(Planned::hole);
        Optional<StoredPlan.Basis> basis = plan.map(StoredPlan::basis);
        return shapes.tree(new Shape()
                .with("course", told.day().course().id())
                .with("hole", told.hole().id())
                .with("date", told.day().date())
                .with("state", plan.map(StoredPlan::state))
                .with(hole.map(StoredHole::position).map(this::judged).orElseGet(PlanJson::notJudged))
                .with("slopeError", answer.slopeError().map(SlopeErrorShape::of))
                .with("reasons", hole.map(reasons::all).orElse(List.of()))
                .with("alternative", hole.flatMap(StoredHole::alternative))
                .with(
                        "cut",
                        told.done().stream().reduce((earlier, later) -> later).map(last -> cut(told, last)))
                .with("entries", entries(told))
                .with("temporaryGreen", told.temporaryGreen())
                .with("really", answer.really().map(this::judged))
                .with(
                        "speedFeet",
                        basis.map(StoredPlan.Basis::speedFeet)
                                .orElse(told.day().fastest().feet()))
                .with(
                        "speedFrom",
                        speedFrom(basis.map(StoredPlan.Basis::daySpeed)
                                .orElse(told.day().speed())))
                .with("rain", rain(told, basis).expected())
                .with("rainFrom", rain(told, basis))
                .with("seed", basis.map(StoredPlan.Basis::seed))
                .with("policyVersion", basis.map(StoredPlan.Basis::policyVersion))
                .with("engineVersion", basis.map(StoredPlan.Basis::engineVersion))
                .with("weatherBasis", told.weather()));
    }

    private static DayRain rain(Told told, Optional<StoredPlan.Basis> basis) {
        return basis.map(StoredPlan.Basis::dayRain).orElse(told.day().rain());
    }

    /** Where a speed comes from: what was read, and what came on top. */
    private static Shape speedFrom(DaySpeed speed) {
        return new Shape()
                .with("source", speed.from())
                .with("readFeet", speed.reading().map(DaySpeed.Reading::feet))
                .with("readOn", speed.reading().map(DaySpeed.Reading::day))
                .with("readAt", speed.reading().flatMap(DaySpeed.Reading::time).map(LocalTime::toString))
                .with("added", speed.added());
    }

    /** A position with every rule. */
    private Shape judged(JudgedPosition position) {
        Judgement judgement = position.judgement();
        return places.judged(position)
                .with("rules", judgement.rules())
                .with("difficulty", judgement.difficulty())
                .with("setAside", judgement.setAside());
    }

    private static Shape notJudged() {
        Shape shape = new Shape();
        List.of("position", "verdict", "restsOn", "word", "rules", "difficulty", "setAside")
                .forEach(part -> shape.with(part, Optional.empty()));
        return shape;
    }

    private static List<Fact> entries(Told told) {
        return told.done().isEmpty() && told.planned().isEmpty()
                ? told.before().stream().toList()
                : told.done();
    }

    /** The day's last word on the hole. */
    private static Shape cut(Told told, Fact last) {
        ZonedDateTime when =
                last.happenedAt().atZone(told.day().course().frame().zone());
        boolean left = last.payload() instanceof LeftInOldHole;
        return new Shape()
                .with("time", when.toLocalTime().truncatedTo(ChronoUnit.MINUTES).toString())
                .with("person", last.person())
                .with("at", told.at().filter(place -> !left));
    }
}
