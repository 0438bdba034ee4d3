package org.cupwright.app.cli.plan;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.DayText;
import org.cupwright.app.answers.FactText;
import org.cupwright.app.answers.GreenText;
import org.cupwright.app.answers.WeatherText;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.PlanJson;
import org.cupwright.app.cli.command.JudgementPrint;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.plan.ExplainHole;
import org.cupwright.app.desk.plan.ExplainHole.Told;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan.Basis;
import org.cupwright.app.texts.Texts;
import org.cupwright.cupchange.CupWork.LeftInOldHole;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.ConcessionStep;
import org.cupwright.policy.EnumNames;

/** Why a hole was where it was, as a page and as JSON. */
final class ExplainPrint {
    private final Task task;
    private final Texts texts;

    ExplainPrint(Task task) {
        this.task = task;
        this.texts = task.texts();
    }

    void print(ExplainHole.Answer answer) {
        double pace = answer.told().policy().get(PlacePolicy.PACE_METRES);
        if (task.options().json()) {
            task.print(Json.document(
                    new PlanJson(answer.told().day().course(), answer.told().policy(), texts).why(answer)));
        } else {
            page(answer, new JudgementPrint(texts, pace)).forEach(task::print);
        }
    }

    private List<String> page(ExplainHole.Answer answer, JudgementPrint judgements) {
        Told told = answer.told();
        String key = told.planned().isPresent() ? "explain.title" : "explain.title.unplanned";
        List<String> lines = new ArrayList<>();
        lines.add(texts.say(
                key,
                told.hole().id(),
                told.day().course().name(),
                texts.day(told.day().date())));
        lines.add("");
        told.metresOffPlan().ifPresent(metres -> lines.add(texts.say("explain.planned")));
        told.planned()
                .ifPresentOrElse(
                        planned -> lines.addAll(judgements.full(planned.hole().position())),
                        () -> lines.add(texts.say("explain.noPlan")));
        lines.addAll(done(told));
        answer.really().ifPresent(really -> {
            lines.add("");
            lines.add(texts.say("explain.really"));
            lines.addAll(judgements.full(really));
            if (told.stayed()) {
                lines.addAll(Layout.wrapped("", texts.say("explain.ownHole")));
            }
        });
        told.planned().ifPresent(planned -> lines.addAll(why(planned.hole(), judgements)));
        lines.add("");
        lines.addAll(basis(told));
        return lines;
    }

    private List<String> why(StoredHole hole, JudgementPrint judgements) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add(texts.say("explain.why"));
        hole.reasons().forEach(reason -> lines.addAll(Layout.hanging("  – ", texts.say(reason))));
        for (ConcessionStep step : hole.concessions()) {
            lines.add("  – " + new GreenText(texts).setAside(step));
        }
        hole.alternative().ifPresent(other -> {
            lines.add("");
            lines.add(texts.say("explain.instead", judgements.where(other.position())));
            other.whyNot().forEach(reason -> lines.addAll(Layout.hanging("  – ", texts.say(reason))));
        });
        return lines;
    }

    private List<String> basis(Told told) {
        DayText days = new DayText(texts);
        List<String> lines = new ArrayList<>();
        told.planned()
                .ifPresentOrElse(
                        planned -> {
                            Basis basis = planned.plan().basis();
                            lines.add(days.speed(basis.speedFeet(), basis.rain()) + " · "
                                    + texts.say("state."
                                            + EnumNames.lowerCamel(
                                                    planned.plan().state())));
                            lines.addAll(Layout.wrapped(
                                    "",
                                    texts.say(
                                            "explain.basis",
                                            basis.engineVersion(),
                                            basis.policyVersion(),
                                            Long.toString(basis.seed()))));
                        },
                        () -> lines.add(days.speed(told.day())));
        lines.addAll(Layout.wrapped("", new WeatherText(texts).basis(told.weather())));
        return lines;
    }

    /** What the logbook says: the day's entries, and how far from the plan that was. */
    private List<String> done(Told told) {
        FactText facts = new FactText(texts, told.day().course(), told.policy());
        List<String> lines = new ArrayList<>();
        if (!told.done().isEmpty()) {
            lines.add("");
            lines.add(texts.say("explain.done"));
            told.done()
                    .forEach(fact -> lines.addAll(Layout.hanging("  " + facts.moment(fact) + "  ", facts.told(fact))));
            told.planned()
                    .ifPresent(planned -> lines.add(texts.say(
                            told.metresOffPlan().isPresent() ? "explain.offPlan" : "explain.asPlanned",
                            texts.length(told.metresOffPlan().orElse(0.0)))));
        } else if (told.planned().isPresent()) {
            lines.add("");
            lines.add(texts.say("explain.nothingDone"));
        }
        boolean wanted = told.done().stream().noneMatch(fact -> !(fact.payload() instanceof LeftInOldHole));
        if (wanted && (told.planned().isEmpty() || !told.done().isEmpty())) {
            told.before().ifPresent(before -> {
                lines.add(texts.say("explain.before"));
                lines.addAll(Layout.hanging("  " + facts.moment(before) + "  ", facts.told(before)));
            });
        }
        return lines;
    }
}
