package org.cupwright.app.desk.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.storage.Asked;
import org.cupwright.app.storage.PlanChange;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.Basis;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Said;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.PlannedHole;
import org.cupwright.rotation.RotationPolicy;
import org.cupwright.rotation.weeks.HoleChange;

/**
 * The plans of days with some of their holes elsewhere: all others are kept as they were, reasons and all.
 *
 * @param judgedAs the day as which all are judged
 * @param changes the holes that are elsewhere
 */
record ChangedPlans(CourseDay judgedAs, String engineVersion, List<HoleChange> changes, PlanChange change) {
    private static final String ASKED = "plan.reason.asked";

    /** What is said of greens that had nothing else to choose from; here they were left where they are. */
    private static final Set<String> LEFT_AS_THEY_ARE =
            Set.of("rotation.finding.tooFewGreensOffer", "rotation.finding.tooManyGreensOfferOnly");

    /** A day of which holes are elsewhere. */
    StoredPlan stored(StoredPlan before, DayPlan plan, AskedOfDay asked) {
        List<StoredHole> holes = plan.holes().stream()
                .map(hole -> stored(before, plan, hole, asked.of(hole.hole())))
                .toList();
        return new StoredPlan(
                before.courseId(),
                before.date(),
                State.DRAFT,
                new Basis(
                        before.basis().seed(),
                        judgedAs.speed(),
                        judgedAs.rain(),
                        judgedAs.policyVersion(),
                        engineVersion,
                        judgedAs.policy().get(RotationPolicy.SCHEME)),
                holes,
                plan.totals(),
                PlanDay.named(plan.terms()),
                PlanDay.named(plan.bounds()),
                findings(plan, holes),
                asked.kept(),
                Optional.of(change));
    }

    /** A day of which no hole is elsewhere, but more is asked for. */
    StoredPlan stored(StoredPlan before, AskedOfDay asked) {
        return new StoredPlan(
                before.courseId(),
                before.date(),
                before.state(),
                before.basis(),
                before.holes().stream()
                        .map(hole -> asked(hole, asked.of(hole.hole())))
                        .toList(),
                before.totals(),
                before.terms(),
                before.bounds(),
                before.findings(),
                asked.kept(),
                Optional.of(change));
    }

    private StoredHole stored(StoredPlan before, DayPlan plan, PlannedHole hole, Asked asked) {
        boolean changed = changes.stream()
                .anyMatch(one -> one.date().equals(plan.date()) && one.hole().equals(hole.hole()));
        return before.find(hole.hole())
                .filter(kept -> !changed)
                .map(kept -> asked(kept, asked))
                .orElseGet(() -> PlanWeeks.stored(hole, asked));
    }

    /** The hole where it was, with who asks for it there now. */
    private static StoredHole asked(StoredHole kept, Asked asked) {
        Optional<String> by = asked.at().map(spot -> asked.person());
        if (by.equals(kept.askedBy())) {
            return kept;
        }
        List<Message> reasons = new ArrayList<>();
        by.ifPresent(person -> reasons.add(Message.of(ASKED, new Name(person))));
        kept.reasons().stream().filter(reason -> !reason.key().equals(ASKED)).forEach(reasons::add);
        return new StoredHole(
                kept.hole(),
                kept.position(),
                by.isPresent(),
                by,
                reasons,
                kept.alternative(),
                kept.concessions(),
                kept.since(),
                kept.area());
    }

    private static List<Message> findings(DayPlan plan, List<StoredHole> holes) {
        List<Message> findings = new ArrayList<>();
        Set<String> against = new HashSet<>();
        for (StoredHole hole : holes) {
            List<Message> broken = hole.reasons().stream()
                    .filter(reason -> reason.key().startsWith(HoleRequests.AGAINST))
                    .toList();
            if (!broken.isEmpty() && hole.askedBy().isPresent()) {
                against.add(hole.hole());
                findings.add(Message.of(
                        "plan.finding.askedAgainst",
                        new Name(hole.hole()),
                        new Name(hole.askedBy().get()),
                        new Said(broken)));
            }
        }
        plan.findings().stream()
                .filter(finding -> !LEFT_AS_THEY_ARE.contains(finding.key()))
                .filter(finding -> !(finding.key().equals(HoleRequests.LOCKED_AGAINST_RULES)
                        && finding.arguments().get(0) instanceof Name hole
                        && against.contains(hole.text())))
                .forEach(findings::add);
        return findings;
    }
}
