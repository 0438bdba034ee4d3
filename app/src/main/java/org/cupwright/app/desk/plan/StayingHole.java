package org.cupwright.app.desk.plan;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.desk.green.GreensOfDay;
import org.cupwright.app.desk.green.Judging;
import org.cupwright.app.storage.Asked;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundItem.Kind;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.judging.OtherGround;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.SchemePolicy;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.cupwright.turf.state.CupInGround;
import org.locationtech.jts.geom.Point;

/**
 * The hole of a green on a day without change: it stays where it is, unless nobody knows where that is, a person wants
 * it elsewhere, its ground is closed or saved by then, or it would be older than the course wants.
 */
record StayingHole(GreensOfDay greens, Hole hole, LocalDate date) {
    /** Rules that say that a hole may not be there any longer, whatever it was when it was cut. */
    private static final Set<RuleId> FORCING = EnumSet.of(RuleId.CLOSED_GROUND);

    /** What is decided for a hole that stays; empty where it is changed. */
    Optional<Wishes> wishes(Judging judging, GroundOnDay ground, Asked wanted) {
        Policy policy = greens.day().policy();
        if (SchemePolicy.changes(policy, hole.id(), date)
                || wanted.at().isPresent()
                || greens.roughly(hole.id()).isPresent()) {
            return Optional.empty();
        }
        return greens.holes(hole.id())
                .now()
                .filter(cup -> cup.cutOn().isBefore(date))
                .filter(cup -> hole.green().contains(cup.at()) && !wanted.rulesOut(cup.at()))
                .filter(cup -> date.isBefore(cup.cutOn().plusDays(policy.get(SchemePolicy.HOLE_MOST_DAYS))))
                .flatMap(cup -> stays(cup, judging.candidate(cup.at()), withoutHoles(ground), policy));
    }

    /** Why a hole that nobody asked for is changed on a day without change; empty on a change-day. */
    Optional<Message> changedAllTheSame(Asked wanted) {
        Policy policy = greens.day().policy();
        if (SchemePolicy.changes(policy, hole.id(), date) || !wanted.isNothing()) {
            return Optional.empty();
        }
        Name name = new Name(hole.id());
        Optional<CupInGround> cup = greens.holes(hole.id())
                .now()
                .filter(known -> greens.roughly(hole.id()).isEmpty())
                .filter(known -> known.cutOn().isBefore(date) && hole.green().contains(known.at()));
        if (cup.isEmpty()) {
            return Optional.of(Message.of("plan.finding.changedUnknown", name));
        }
        int most = policy.get(SchemePolicy.HOLE_MOST_DAYS);
        boolean old = !date.isBefore(cup.get().cutOn().plusDays(most));
        return Optional.of(
                old
                        ? Message.of("plan.finding.changedOld", name, new Count(most))
                        : Message.of("plan.finding.changedGround", name));
    }

    private static Optional<Wishes> stays(CupInGround cup, Candidate there, GroundOnDay ground, Policy policy) {
        Judgement judged = new OtherGround(ground, policy).of(there.judgement());
        boolean forced = judged.rules().stream()
                .anyMatch(result -> FORCING.contains(result.rule()) && result.outcome() == Outcome.FAIL);
        Candidate stays = new Candidate(judged, there.place(), 0, isSaved(cup.at(), ground));
        return forced || stays.onSavedGround() ? Optional.empty() : Optional.of(Wishes.stays(stays, cup.cutOn()));
    }

    private static boolean isSaved(MapPoint at, GroundOnDay ground) {
        Point point = at.toPoint();
        return ground.counting(Kind.SAVED).stream()
                .anyMatch(area -> area.place().covers(point));
    }

    /** Its own hole is none of the old ones, and what it is to the others was asked when it was cut. */
    private static GroundOnDay withoutHoles(GroundOnDay ground) {
        List<GroundItem> others = ground.items().stream()
                .filter(item -> item.kind() != Kind.OLD_HOLE && item.kind() != Kind.PLUG)
                .toList();
        return new GroundOnDay(ground.day(), others);
    }
}
