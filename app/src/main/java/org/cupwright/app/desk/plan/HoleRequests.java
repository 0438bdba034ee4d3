package org.cupwright.app.desk.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.green.GreensOfDay;
import org.cupwright.app.desk.green.Judging;
import org.cupwright.app.storage.Asked;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredHole.Other;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.course.Hole;
import org.cupwright.green.Third;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Said;
import org.cupwright.rotation.Alternative;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.PlannedHole;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.rotation.candidate.Wishes;

/**
 * What the plan may choose from hole by hole, with what people asked for, and what of its answer is kept.
 *
 * @param only the one hole that is planned, where the others keep the spots of the draft
 */
record HoleRequests(
        GreensOfDay greens,
        Map<String, Judging> judged,
        AskedOfDay asked,
        Optional<StoredPlan> draft,
        Optional<String> only) {
    private static final String LOCKED = "rotation.reason.locked";
    static final String LOCKED_AGAINST_RULES = "rotation.finding.lockedNotUsable";

    /** Reasons that name a rule which the spot breaks. */
    static final String AGAINST = "rotation.reason.fails";

    /** In round order; the holes of practice greens are the person's to choose. */
    List<GreenCandidates> candidates() {
        return greens.day().course().round().stream()
                .parallel()
                .map(hole -> new GreenCandidates(
                        hole.id(),
                        judged.get(hole.id()).candidates(),
                        greens.last(hole.id()),
                        greens.roughly(hole.id())
                                .map(rough -> Third.valueOf(rough.part().depth().name())),
                        wishes(hole)))
                .toList();
    }

    private Wishes wishes(Hole of) {
        String hole = of.id();
        if (greens.temporaryGreen(hole)) {
            return Wishes.greenClosed();
        }
        Asked wanted = asked.of(hole);
        Optional<Wishes> stays = staying(of, wanted);
        if (stays.isPresent()) {
            return stays.get().in(greens.areas(hole, greens.day().date()));
        }
        Optional<Candidate> at = left(hole)
                .map(kept -> kept.position().judgement().position())
                .or(wanted::at)
                .map(judged.get(hole)::candidate);
        List<Wishes.Circle> notHere = wanted.notHere().stream()
                .map(ground -> new Wishes.Circle(ground.at(), ground.radiusMetres()))
                .toList();
        return new Wishes(at, notHere, false).in(greens.areas(hole, greens.day().date()));
    }

    /** Where the day is without change for it; a draft that cuts a new hole all the same is kept to. */
    private Optional<Wishes> staying(Hole hole, Asked wanted) {
        boolean cuts = left(hole.id()).filter(kept -> !kept.stays()).isPresent();
        return cuts
                ? Optional.empty()
                : new StayingHole(greens, hole, greens.day().date())
                        .wishes(judged.get(hole.id()), greens.ground(hole.id()), wanted);
    }

    /** The hole as the draft has it, where it is to be left so. */
    private Optional<StoredHole> left(String hole) {
        boolean stays = only.isPresent() && !only.get().equals(hole);
        return draft.filter(plan -> stays).flatMap(plan -> plan.find(hole));
    }

    StoredHole stored(PlannedHole hole) {
        return left(hole.hole()).orElseGet(() -> made(hole));
    }

    private StoredHole made(PlannedHole hole) {
        Judging judging = judged.get(hole.hole());
        Optional<String> by = askedBy(hole.hole());
        return new StoredHole(
                hole.hole(),
                hole.since().isPresent()
                        ? PlanWeeks.stays(hole.candidate())
                        : judging.told(hole.candidate().judgement()),
                hole.locked() && hole.since().isEmpty(),
                by,
                hole.reasons().stream().map(reason -> askedBy(reason, by)).toList(),
                hole.alternative().map(other -> stored(other, judging)),
                hole.since().isPresent() ? List.of() : judging.green().concessions(),
                hole.since(),
                hole.area());
    }

    static Message askedBy(Message reason, Optional<String> by) {
        return by.filter(person -> reason.key().equals(LOCKED))
                .map(person -> Message.of("plan.reason.asked", new Name(person)))
                .orElse(reason);
    }

    private static Other stored(Alternative alternative, Judging judging) {
        return new Other(judging.told(alternative.candidate().judgement()), alternative.whyNot());
    }

    private Optional<String> askedBy(String hole) {
        Asked wanted = asked.of(hole);
        return wanted.at().map(spot -> wanted.person());
    }

    /** What could not be done; a spot that somebody asked for against the rules with who it was, and the rules. */
    List<Message> findings(DayPlan plan) {
        List<Message> findings = new ArrayList<>();
        plan.holes().stream().flatMap(this::against).forEach(findings::add);
        plan.holes().stream().flatMap(this::changedAllTheSame).forEach(findings::add);
        plan.findings().stream().filter(finding -> !told(finding)).forEach(findings::add);
        return findings;
    }

    private Stream<Message> changedAllTheSame(PlannedHole planned) {
        if (planned.since().isPresent() || left(planned.hole()).isPresent()) {
            return Stream.empty();
        }
        Hole hole = HoleChoice.hole(greens.day().course(), planned.hole());
        return new StayingHole(greens, hole, greens.day().date()).changedAllTheSame(asked.of(hole.id())).stream();
    }

    private Stream<Message> against(PlannedHole hole) {
        List<Message> broken = hole.reasons().stream()
                .filter(reason -> reason.key().startsWith(AGAINST))
                .toList();
        return broken.isEmpty()
                ? Stream.empty()
                : askedBy(hole.hole()).stream()
                        .map(person -> Message.of(
                                "plan.finding.askedAgainst",
                                new Name(hole.hole()),
                                new Name(person),
                                new Said(broken)));
    }

    private boolean told(Message finding) {
        return finding.key().equals(LOCKED_AGAINST_RULES)
                && finding.arguments().get(0) instanceof Name hole
                && askedBy(hole.text()).isPresent();
    }
}
