package org.cupwright.app.desk.entry;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.log.DayLog;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.app.desk.plan.PlanChoice;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Payload;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;

/** Keeps an entry in the logbook. When the answer is there, it is on the disk. */
public record RecordFact(Session session) {
    /** The course and what was read of it. */
    private record Ground(Course course, Policy policy, LocalDate day, Optional<StoredPlan> plan, DayLog log) {
        ZoneId zone() {
            return course.frame().zone();
        }

        Optional<MapPoint> planned(Hole hole) {
            return plan.flatMap(known -> known.find(hole.id()))
                    .map(StoredHole::position)
                    .map(position -> position.judgement().position());
        }

        /** Whether a plan has a hole cut that day. */
        boolean toBeCut(Hole hole) {
            return plan.flatMap(known -> known.find(hole.id()))
                    .filter(planned -> !planned.stays())
                    .isPresent();
        }

        Says.Said ask(Entry entry, Optional<Hole> hole) {
            return entry.says()
                    .on(new Says.Occasion(course, policy, day, hole, Optional.empty(), hole.flatMap(this::planned)));
        }
    }

    /** Keeps the entry, one fact for each hole it names, all of them or none. */
    public Answer record(Entry entry) {
        return session.decide(Right.RECORD, stores -> {
            Ground ground = ground(stores, entry);
            Set<Message> remarks = new LinkedHashSet<>();
            List<Fact> facts = facts(stores, ground, entry, remarks);
            facts.forEach(fact -> FactQuestions.ask(ground.course(), fact, entry.sure()));
            if (!entry.sure()) {
                FactQuestions.askClock(stores.facts(), ground.course(), session.now());
            }
            facts.forEach(fact -> StopRemark.about(fact, stores.facts(), ground.policy(), ground.zone())
                    .ifPresent(remarks::add));
            entry.photo().ifPresent(stores.photos()::add);
            facts.forEach(stores.facts()::add);
            return answer(ground, facts, remarks);
        });
    }

    /** What {@link #record} would keep now; nothing is kept. */
    public Answer look(Entry entry) {
        return session.read(stores -> {
            Ground ground = ground(stores, entry);
            Set<Message> remarks = new LinkedHashSet<>();
            return answer(ground, facts(stores, ground, entry, remarks), remarks);
        });
    }

    private static Answer answer(Ground ground, List<Fact> facts, Set<Message> remarks) {
        List<Fact> kept = facts.stream().map(LeftInstead::counting).toList();
        return new Answer(ground.course(), ground.policy(), kept, List.copyOf(remarks));
    }

    private List<Fact> facts(Stores stores, Ground ground, Entry entry, Set<Message> remarks) {
        List<Fact> facts = new ArrayList<>();
        for (Optional<Hole> hole : holes(ground, entry)) {
            Says.Said said = ground.ask(entry, hole);
            remarks.addAll(said.remarks());
            Fact fact = fact(said, entry, ground, hole);
            Optional<Fact> cut = LeftInstead.of(fact, ground.log())
                    .filter(before -> !entry.beside() || before.person().equals(fact.person()));
            facts.add(cut.map(before -> new LeftInstead(stores.facts(), before).corrected(fact))
                    .orElse(fact));
            cut.map(LeftInstead::remark).ifPresent(remarks::add);
        }
        return facts;
    }

    /**
     * What was said.
     *
     * @param kept the facts that are kept now
     * @param remarks how what was typed was understood, where it could be understood otherwise
     */
    public record Answer(Course course, Policy policy, List<Fact> kept, List<Message> remarks) {}

    private Ground ground(Stores stores, Entry entry) {
        Course course = session.course(stores);
        LocalDate day = entry.day().orElseGet(() -> CourseToday.of(course, session.clock()));
        Policy policy = stores.policies().history(course.id()).at(day);
        Optional<StoredPlan> plan = entry.asPlanned()
                ? Optional.of(PlanChoice.plan(stores, course, day))
                : stores.plans().find(course.id(), day);
        return new Ground(course, policy, day, plan, DayLog.of(stores.facts(), course, day));
    }

    private static List<Optional<Hole>> holes(Ground ground, Entry entry) {
        if (entry.holes().isEmpty()) {
            return List.of(Optional.empty());
        }
        if (entry.holes().equals(List.of("all"))) {
            return all(ground, entry);
        }
        return entry.holes().stream()
                .map(id -> Optional.of(HoleChoice.hole(ground.course(), id)))
                .toList();
    }

    /** Every hole of the course; cut as planned, those of the plan that nobody has said anything about yet. */
    private static List<Optional<Hole>> all(Ground ground, Entry entry) {
        List<Optional<Hole>> holes = ground.course().holes().stream()
                .filter(hole -> !entry.asPlanned()
                        || (ground.toBeCut(hole)
                                && ground.log().change(hole.id()).isEmpty()))
                .map(Optional::of)
                .toList();
        boolean nothingDue =
                entry.asPlanned() && ground.course().holes().stream().noneMatch(ground::toBeCut);
        if (nothingDue) {
            throw Problem.of("log.noChangeDay", "hole", "all", new Day(ground.day()));
        }
        if (holes.isEmpty()) {
            throw Problem.of("log.allEntered", "hole", "all", new Day(ground.day()));
        }
        return holes;
    }

    private Fact fact(Says.Said said, Entry entry, Ground ground, Optional<Hole> hole) {
        Instant now = session.now();
        Payload payload = said.payload();
        if (payload.needsHole() && hole.isEmpty()) {
            throw Problem.of("log.needsHole", "hole", "", new Name(LogProblems.typed(payload.kind())));
        }
        if (DayLog.isChange(payload) && !entry.sure()) {
            hole.flatMap(known -> ground.log().change(known.id())).ifPresent(before -> {
                throw LeftInstead.of(payload, before) ? LogProblems.leftInstead(before) : LogProblems.again(before);
            });
        }
        boolean today = LocalDate.ofInstant(now, ground.zone()).equals(ground.day());
        return new Fact(
                session.ids().get(),
                Fact.CURRENT_VERSION,
                said.when().orElseGet(() -> today ? now : morning(ground)),
                now,
                Optional.empty(),
                session.person().name(),
                ground.course().id(),
                hole.map(Hole::id),
                payload);
    }

    /**
     * The morning of a day; after what is entered of that morning already, so that the later entry counts as the later.
     */
    private static Instant morning(Ground ground) {
        Instant morning = DayLog.morning(ground.day(), ground.zone());
        return ground.log()
                .last(morning, morning.plus(Duration.ofHours(1)))
                .map(last -> last.plusSeconds(1))
                .orElse(morning);
    }
}
