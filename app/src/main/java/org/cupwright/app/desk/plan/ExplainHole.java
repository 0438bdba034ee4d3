package org.cupwright.app.desk.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.green.AssessGreen;
import org.cupwright.app.desk.green.MeasuredGreen;
import org.cupwright.app.desk.green.SlopeError;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.app.desk.turf.WeeksWeather;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.FactStore;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.CupWork.CutSomewhere;
import org.cupwright.cupchange.CupWork.HoleMovedInPlay;
import org.cupwright.cupchange.CupWork.LeftInOldHole;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.GroundNote.TemporaryGreen;
import org.cupwright.cupchange.Payload;
import org.cupwright.cupchange.PayloadKinds;
import org.cupwright.policy.Policy;
import org.cupwright.turf.weather.WeatherBasis;

/**
 * Why a hole was where it was on a day: from the plan that was stored, not computed anew, and from the logbook. Where
 * the hole was not where a plan had it, the rules are asked about the spot where it was.
 */
public record ExplainHole(Session session) {
    /** Nobody cuts to a finer measure: our choice. */
    private static final double SAME_PLACE_METRES = 0.1;

    private static final Set<String> KINDS =
            PayloadKinds.names(CupChanged.class, CutSomewhere.class, LeftInOldHole.class, HoleMovedInPlay.class);

    private static final Set<String> TEMPORARY = PayloadKinds.names(TemporaryGreen.class);

    /** A plan, and the hole in it. */
    public record Planned(StoredPlan plan, StoredHole hole) {
        public MapPoint at() {
            return hole.position().judgement().position();
        }
    }

    /**
     * What is known of a hole on a day.
     *
     * @param day the day
     * @param hole the hole
     * @param planned the plan's spot, if a plan of the day is kept and has one
     * @param done entries of the day about the hole itself, in order
     * @param before the last entry before the day that put the hole somewhere
     * @param at where the hole really was, as far as the logbook says; empty when it says nothing
     * @param temporaryGreen whether the hole was played to a temporary green that day, and so is not on this one
     * @param weather what the weather rests on by which old holes rest
     */
    public record Told(
            CourseDay day,
            Hole hole,
            Optional<Planned> planned,
            List<Fact> done,
            Optional<Fact> before,
            Optional<MapPoint> at,
            boolean temporaryGreen,
            WeatherBasis weather) {
        public Policy policy() {
            return day.policy();
        }

        /** Whether the hole was where an earlier day had put it. */
        public boolean stayed() {
            return done.stream().noneMatch(fact -> puts(fact.payload()));
        }

        /**
         * How far from the plan's spot the hole was; empty when either is not known, or nobody could tell the two
         * apart.
         */
        public Optional<Double> metresOffPlan() {
            return planned.flatMap(plan -> at.map(place -> place.distanceMetres(plan.at())))
                    .filter(metres -> metres >= SAME_PLACE_METRES);
        }
    }

    /**
     * All that can be said.
     *
     * @param really the spot where the hole was, judged for the day; empty where it was as planned, off the green, or
     *     nobody knows
     * @param slopeError of what the error of the slope is made at the plan's spot, as the ground is known now
     */
    public record Answer(Told told, Optional<JudgedPosition> really, Optional<SlopeError> slopeError) {}

    public Answer of(DayQuestion question, String holeId) {
        Told told = session.read(stores -> told(stores, question, holeId));
        boolean elsewhere = told.planned().isEmpty() || told.metresOffPlan().isPresent();
        Optional<JudgedPosition> really = told.at()
                .filter(place -> elsewhere && told.hole().green().contains(place))
                .flatMap(place -> new AssessGreen(session)
                        .of(question, holeId, Optional.of(new Spot.At(place)))
                        .asked());
        return new Answer(told, really, told.planned().flatMap(planned -> slopeError(told, planned)));
    }

    private Optional<SlopeError> slopeError(Told told, Planned planned) {
        MeasuredGreen green = session.read(
                stores -> MeasuredGreen.of(stores, told.day().course().id(), told.hole()));
        return green.survey()
                .flatMap(any -> SlopeError.at(green.green(told.policy()).ground(), planned.at()));
    }

    private Told told(Stores stores, DayQuestion question, String holeId) {
        CourseDay day = CourseDay.of(stores, question, session);
        Hole hole = HoleChoice.hole(day.course(), holeId);
        FactsInEffect facts = new FactsInEffect(stores.facts(), day.course().id());
        List<Fact> done =
                of(hole, facts.ofKinds(KINDS, day.log().start(), day.log().end()));
        Optional<Fact> before = of(
                        hole, facts.ofKinds(KINDS, FactStore.LONG_AGO, day.log().start()))
                .stream()
                .filter(fact -> puts(fact.payload()))
                .reduce((earlier, later) -> later);
        Optional<StoredPlan> plan = PlanChoice.find(stores, day.course(), day.date());
        Optional<Planned> planned = plan.flatMap(known -> known.find(holeId).map(spot -> new Planned(known, spot)));
        boolean temporary = temporaryGreen(hole, day, facts);
        if (planned.isEmpty() && done.isEmpty() && before.isEmpty() && !temporary) {
            throw plan.isPresent()
                    ? PlanChoice.leftOut(holeId, day.date())
                    : PlanChoice.none(stores, day.course(), day.date());
        }
        Optional<MapPoint> at = temporary ? Optional.empty() : at(planned, done, before);
        return new Told(day, hole, planned, done, before, at, temporary, WeeksWeather.of(stores, day));
    }

    private static boolean temporaryGreen(Hole hole, CourseDay day, FactsInEffect facts) {
        return of(hole, facts.ofKinds(TEMPORARY, FactStore.LONG_AGO, day.log().end())).stream()
                .reduce((earlier, later) -> later)
                .filter(last -> ((TemporaryGreen) last.payload()).inPlay())
                .isPresent();
    }

    private static List<Fact> of(Hole hole, List<Fact> facts) {
        return facts.stream()
                .filter(fact -> fact.hole().equals(Optional.of(hole.id())))
                .toList();
    }

    /**
     * The day's last word; left where it was, or nothing said though there was no plan: where it was put last before.
     */
    private static Optional<MapPoint> at(Optional<Planned> planned, List<Fact> done, Optional<Fact> before) {
        Optional<Fact> put = done.stream().filter(fact -> puts(fact.payload())).reduce((earlier, later) -> later);
        boolean stayed = !done.isEmpty() || planned.isEmpty();
        return (put.isPresent() || !stayed ? put : before).flatMap(fact -> place(fact.payload()));
    }

    /** Whether it says that the hole went somewhere, be the place known or not. */
    private static boolean puts(Payload payload) {
        return payload instanceof CutSomewhere || place(payload).isPresent();
    }

    private static Optional<MapPoint> place(Payload payload) {
        if (payload instanceof CupChanged changed) {
            return Optional.of(changed.cutAt());
        }
        return payload instanceof HoleMovedInPlay moved ? Optional.of(moved.movedTo()) : Optional.empty();
    }
}
