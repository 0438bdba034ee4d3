package org.cupwright.app.storage;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.storage.DaySpeed.From;
import org.cupwright.message.Message;
import org.cupwright.rotation.Scheme;
import org.cupwright.rotation.Totals;

/**
 * A day's plan as it is kept, with all that is needed to say later why a hole was where it was.
 *
 * @param courseId the course
 * @param date the day
 * @param state how far it has come
 * @param basis what it was made with
 * @param holes in round order
 * @param totals how they are spread
 * @param terms every wish of the plan, by name, in its own unit
 * @param bounds for every wish the best that any plan of that day could have
 * @param findings what could not be done
 * @param asked what people asked for single holes
 * @param change the change of plans that made this version, as long as nothing was made of it since
 */
public record StoredPlan(
        String courseId,
        LocalDate date,
        State state,
        Basis basis,
        List<StoredHole> holes,
        Totals totals,
        Map<String, Double> terms,
        Map<String, Double> bounds,
        List<Message> findings,
        List<Asked> asked,
        Optional<PlanChange> change) {
    /** The life of a plan. */
    public enum State {
        DRAFT,
        PUBLISHED,
        DONE
    }

    /**
     * What a plan was made with.
     *
     * @param seed decided between equally good plans
     * @param speedFeet the day's fastest green speed
     * @param rain whether rain was expected
     * @param policyVersion how many changes of the policy there had been
     * @param engineVersion the version of the engine
     * @param speedFrom the same speed with where it came from; empty in plans from before that was kept
     * @param rainFrom who expected rain; empty in plans from before that was kept
     * @param scheme how the holes were to be spread; empty in plans from before that was kept
     */
    public record Basis(
            long seed,
            double speedFeet,
            boolean rain,
            int policyVersion,
            String engineVersion,
            Optional<DaySpeed> speedFrom,
            Optional<DayRain> rainFrom,
            Optional<Scheme> scheme) {
        public Basis(long seed, DaySpeed speed, DayRain rain, int policyVersion, String engineVersion, Scheme scheme) {
            this(
                    seed,
                    speed.feet(),
                    rain.expected(),
                    policyVersion,
                    engineVersion,
                    Optional.of(speed),
                    Optional.of(rain),
                    Optional.of(scheme));
        }

        /** The day's fastest green speed, and where it came from as far as that was kept. */
        public DaySpeed daySpeed() {
            return speedFrom.orElseGet(() -> DaySpeed.of(speedFeet, From.NOT_KEPT));
        }

        /** Whether rain was expected; nobody but a person said so before forecasts did. */
        public DayRain dayRain() {
            return rainFrom.orElseGet(() -> DayRain.said(rain));
        }
    }

    /** Whether its spots are suggestions: the day's areas are what it says. */
    public boolean leavesTheSpots() {
        return basis.scheme().equals(Optional.of(Scheme.AREA_ONLY));
    }

    /** A plan that was made as a whole. */
    public StoredPlan(
            String courseId,
            LocalDate date,
            State state,
            Basis basis,
            List<StoredHole> holes,
            Totals totals,
            Map<String, Double> terms,
            Map<String, Double> bounds,
            List<Message> findings,
            List<Asked> asked) {
        this(courseId, date, state, basis, holes, totals, terms, bounds, findings, asked, Optional.empty());
    }

    public StoredPlan {
        holes = List.copyOf(holes);
        findings = List.copyOf(findings);
        asked = List.copyOf(asked);
    }

    /** The same plan in another state. */
    public StoredPlan in(State other) {
        return new StoredPlan(courseId, date, other, basis, holes, totals, terms, bounds, findings, asked, change);
    }

    public Optional<StoredHole> find(String hole) {
        return holes.stream().filter(planned -> planned.hole().equals(hole)).findFirst();
    }
}
