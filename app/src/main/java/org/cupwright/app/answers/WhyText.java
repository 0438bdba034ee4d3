package org.cupwright.app.answers;

import java.util.Optional;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.green.SlopeError;
import org.cupwright.app.desk.plan.ExplainHole;
import org.cupwright.app.desk.plan.ExplainHole.Planned;
import org.cupwright.app.desk.plan.ExplainHole.Told;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.texts.Texts;
import org.cupwright.cupchange.CupWork.CutSomewhere;
import org.cupwright.cupchange.CupWork.LeftInOldHole;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Payload;
import org.cupwright.green.PlacePolicy;
import org.cupwright.policy.EnumNames;

/** Why a hole was where it was, in words. */
public final class WhyText {
    private final Texts texts;
    private final Told told;
    private final JudgementText judgements;
    private final FactText facts;
    private final Lines lines;

    public WhyText(Texts texts, Told told) {
        this.texts = texts;
        this.told = told;
        this.judgements = new JudgementText(texts, told.policy().get(PlacePolicy.PACE_METRES));
        this.facts = new FactText(texts, told.day().course(), told.policy());
        this.lines = new Lines(texts);
    }

    /** The plan's spot, what was done, where the hole really was, why, and what all that rests on. */
    public Lines lines(ExplainHole.Answer answer) {
        String key = told.planned().isPresent() ? "explain.title" : "explain.title.unplanned";
        CourseDay day = told.day();
        lines.say(key, told.hole().id(), day.course().name(), texts.day(day.date()))
                .gap();
        if (told.temporaryGreen()) {
            lines.say("explain.temporaryGreen").gap();
        }
        if (told.metresOffPlan().isPresent()) {
            lines.say("explain.planned");
        }
        told.planned()
                .ifPresentOrElse(
                        planned -> judgements.full(planned.hole().position(), lines),
                        () -> lines.say("explain.noPlan"));
        answer.slopeError().ifPresent(error -> lines.wrapped("", slopeError(error)));
        done();
        before();
        told.before().map(Fact::payload).ifPresent(this::plug);
        answer.really().ifPresent(this::really);
        told.planned().map(Planned::hole).ifPresent(this::why);
        basis(told.planned().map(Planned::plan));
        return lines;
    }

    /** The two parts of the slope's error, and what the points share. */
    private String slopeError(SlopeError error) {
        String whole = percent(error.standardError());
        if (error.parts().shared() == 0) {
            return texts.say("explain.slopeError.own", whole);
        }
        return texts.say(
                        "explain.slopeError",
                        whole,
                        percent(error.parts().own()),
                        percent(error.parts().shared()))
                + " " + new SharingText(texts).shared(error.sharing());
    }

    private String percent(double standardError) {
        return texts.number(2 * 100 * standardError, 2);
    }

    /** What the logbook says: the day's entries, and how far from the plan that was. */
    private void done() {
        if (told.done().isEmpty()) {
            told.planned().ifPresent(planned -> lines.heading("explain.nothingDone"));
            return;
        }
        lines.heading("explain.done");
        told.done().forEach(this::entry);
        Optional<Double> off = told.metresOffPlan();
        told.planned()
                .filter(planned -> told.at().isPresent())
                .ifPresent(planned -> lines.say(
                        off.isPresent() ? "explain.offPlan" : "explain.asPlanned", texts.length(off.orElse(0.0))));
    }

    /** Who put the hole there, where nobody did so on the day. */
    private void before() {
        boolean left = told.done().stream().allMatch(fact -> fact.payload() instanceof LeftInOldHole);
        if (left && (told.planned().isEmpty() || !told.done().isEmpty())) {
            told.before().ifPresent(before -> {
                lines.say("explain.before");
                entry(before);
            });
        }
    }

    /** Where the plug goes, where no more is known of it than the part of the green. */
    private void plug(Payload before) {
        if (before instanceof CutSomewhere somewhere) {
            PositionText positions = new PositionText(texts, told.policy().get(PlacePolicy.PACE_METRES));
            lines.say("sheet.card.plugRoughly", positions.part(somewhere));
        }
    }

    private void entry(Fact fact) {
        lines.wrapped("  " + facts.moment(fact) + "  ", facts.told(fact));
    }

    private void really(JudgedPosition really) {
        lines.heading("explain.really");
        judgements.full(really, lines);
        if (told.stayed()) {
            lines.wrapped("", texts.say("explain.ownHole"));
        }
    }

    private void why(StoredHole hole) {
        lines.heading("explain.why");
        double pace = told.policy().get(PlacePolicy.PACE_METRES);
        new ReasonText(texts, pace).all(hole).forEach(this::reason);
        hole.concessions().forEach(step -> lines.line("  – " + new GreenText(texts).setAside(step)));
        hole.alternative().ifPresent(other -> {
            lines.heading("explain.instead", judgements.where(other.position()));
            other.whyNot().stream().map(texts::say).forEach(this::reason);
        });
    }

    private void reason(String says) {
        lines.wrapped("  – ", says);
    }

    private void basis(Optional<StoredPlan> plan) {
        DayText days = new DayText(texts);
        lines.gap();
        if (plan.isPresent()) {
            StoredPlan.Basis basis = plan.get().basis();
            String state = texts.say("state." + EnumNames.lowerCamel(plan.get().state()));
            lines.line(days.speed(basis.daySpeed(), basis.dayRain()) + " · " + state);
            lines.wrapped("", days.whence(basis.daySpeed()));
            String seed = Long.toString(basis.seed());
            lines.wrapped("", texts.say("explain.basis", basis.engineVersion(), basis.policyVersion(), seed));
        } else {
            lines.line(days.speed(told.day()));
            lines.wrapped("", days.whence(told.day().speed()));
        }
        lines.wrapped("", new WeatherText(texts).basis(told.weather()));
    }
}
