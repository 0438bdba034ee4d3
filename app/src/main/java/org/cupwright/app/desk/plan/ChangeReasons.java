package org.cupwright.app.desk.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.cupwright.app.storage.Asked;
import org.cupwright.holelocation.RuleId;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Translated;
import org.cupwright.rotation.weeks.HoleChange;
import org.cupwright.rotation.weeks.HoleChange.Cause;

/**
 * Why holes are elsewhere than they were planned, in words of what people said.
 *
 * @param asked what was asked for each day
 * @param spoiled ground that was said to be spoiled just now
 * @param swaps holes whose spots were exchanged just now
 */
record ChangeReasons(Map<LocalDate, AskedOfDay> asked, List<Asked.Circle> spoiled, List<ChangeAsked.Swap> swaps) {
    Message of(HoleChange change) {
        Cause cause = change.cause();
        if (cause instanceof HoleChange.Fixed) {
            return fixed(change);
        }
        if (cause instanceof HoleChange.RuledOut) {
            return ruledOut(change);
        }
        if (cause instanceof HoleChange.RuleBroken broken) {
            return broken.rule() == RuleId.CLOSED_GROUND
                    ? why("closedGround")
                    : why("rule", new Translated("rule." + broken.rule().id()));
        }
        if (cause instanceof HoleChange.FollowsFrom follows) {
            return why("follows", new Name(follows.hole()), new Day(follows.date()));
        }
        if (cause instanceof HoleChange.Stays stays) {
            return why("stays", new Day(stays.since()));
        }
        return why(plain(cause));
    }

    private static String plain(Cause cause) {
        if (cause instanceof HoleChange.GreenClosed) {
            return "closed";
        }
        if (cause instanceof HoleChange.GreenOpen) {
            return "open";
        }
        if (cause instanceof HoleChange.OutsideArea) {
            return "area";
        }
        if (cause instanceof HoleChange.GroundSaved) {
            return "saved";
        }
        return cause instanceof HoleChange.GroundRests ? "rests" : "evens";
    }

    private Message fixed(HoleChange change) {
        Asked wanted = asked.get(change.date()).of(change.hole());
        boolean swapped = swaps.stream()
                .anyMatch(swap -> swap.hole().equals(change.hole())
                        && (swap.one().equals(change.date()) || swap.other().equals(change.date())));
        if (swapped) {
            return why("swapped", new Name(wanted.person()));
        }
        return wanted.at().isPresent() ? why("asked", new Name(wanted.person())) : why("logbook");
    }

    private Message ruledOut(HoleChange change) {
        boolean here = change.from()
                .filter(from -> spoiled.stream()
                        .anyMatch(ground -> from.at().distanceMetres(ground.at()) <= ground.radiusMetres()))
                .isPresent();
        Asked wanted = asked.get(change.date()).of(change.hole());
        return here ? why("spoiled", new Name(wanted.person())) : why("ruledOut", new Name(wanted.person()));
    }

    private static Message why(String what, Message.Argument... arguments) {
        return Message.of("change.why." + what, arguments);
    }
}
