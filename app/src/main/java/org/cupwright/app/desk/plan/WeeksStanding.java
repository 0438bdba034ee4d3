package org.cupwright.app.desk.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.green.Judging;
import org.cupwright.app.desk.log.HolesCut;
import org.cupwright.app.desk.log.HolesCut.HoleCut;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.course.MapPoint;
import org.cupwright.formats.items.GroundItems;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundOnDay;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.cupwright.rotation.weeks.ChangeRequest;
import org.cupwright.rotation.weeks.GreenDay;
import org.cupwright.rotation.weeks.GreenWeeks;
import org.cupwright.rotation.weeks.PastHole;
import org.cupwright.rotation.weeks.Stand;
import org.cupwright.rotation.weeks.WeeksRequest;
import org.cupwright.turf.state.CupInGround;

/**
 * Where the holes of planned days stand, for a change of their plans: what was published, what the logbook says of
 * today, and days that are not to be changed are as they are.
 *
 * @param asked the days, with what is asked for them now
 * @param plans their plans
 * @param today what the logbook says of the holes of the first day, where that is today
 * @param mayChange how many of the days may be changed
 * @param ground what lies on the greens besides, as somebody says
 */
record WeeksStanding(
        WeeksAsked asked, List<StoredPlan> plans, Optional<HolesCut> today, int mayChange, GroundItems ground) {
    ChangeRequest request(long seed) {
        WeeksRequest weeks = asked.request(seed);
        Map<String, List<Optional<Stand>>> stands = new HashMap<>();
        for (GreenWeeks green : weeks.greens()) {
            List<Optional<Stand>> days = new ArrayList<>();
            for (int day = 0; day < plans.size(); day++) {
                days.add(stand(green.hole(), day));
            }
            stands.put(green.hole(), days);
        }
        List<GreenWeeks> greens =
                weeks.greens().stream().map(green -> frozen(green, stands)).toList();
        return new ChangeRequest(
                new WeeksRequest(weeks.days(), greens, weeks.sharedGreens(), weeks.rests(), weeks.busy(), weeks.seed()),
                stands);
    }

    private Judging judging(String hole) {
        return asked.judged().get(hole);
    }

    private Optional<Stand> stand(String hole, int day) {
        Optional<StoredHole> planned = plans.get(day).find(hole);
        boolean setAside = planned.filter(
                        kept -> !kept.position().judgement().setAside().isEmpty())
                .isPresent();
        Optional<MapPoint> at = planned.map(kept -> kept.position().judgement().position());
        return (day == 0 ? cutAt(hole).or(() -> at) : at)
                .map(place -> new Stand(judging(hole).candidate(place), setAside));
    }

    /** Where the logbook says that today's hole is; of days that stand the plan counts. */
    private Optional<MapPoint> cutAt(String hole) {
        return cut(hole)
                .flatMap(word ->
                        word.at().or(() -> asked.greens().holes(hole).now().map(CupInGround::at)));
    }

    private Optional<HoleCut> cut(String hole) {
        boolean draft = plans.get(0).state() == State.DRAFT;
        return today.filter(cut -> draft).flatMap(cut -> cut.find(hole));
    }

    private GreenWeeks frozen(GreenWeeks green, Map<String, List<Optional<Stand>>> stands) {
        String hole = green.hole();
        List<GreenDay> days = new ArrayList<>(green.days());
        for (int day = 0; day < days.size(); day++) {
            Optional<Candidate> stand = stands.get(hole).get(day).map(Stand::spot);
            GreenDay known = withMore(days.get(day), hole);
            days.set(day, known);
            if (isFrozen(hole, day) && stand.isPresent() && !known.wishes().closed()) {
                days.set(
                        day,
                        new GreenDay(
                                known.ground(),
                                known.wishes().withLocked(stand).withForbidden(List.of()),
                                cutOn(hole, day)));
            }
        }
        Optional<HoleCut> word = cut(hole);
        boolean cutToday = word.filter(one -> one.at().isPresent()).isPresent();
        if (word.isPresent() && !cutToday) {
            leave(hole, days);
        }
        List<PastHole> past = cutToday
                ? green.past().stream().filter(old -> old.leftOn().isPresent()).toList()
                : green.past();
        return new GreenWeeks(hole, green.candidates(), green.eased(), past, green.yesterdaysThird(), days);
    }

    private GreenDay withMore(GreenDay known, String hole) {
        List<GroundItem> items = new ArrayList<>(known.ground().items());
        items.addAll(ground.of(hole));
        return new GreenDay(new GroundOnDay(known.ground().day(), items), known.wishes(), known.changes());
    }

    private boolean cutOn(String hole, int day) {
        return plans.get(day).find(hole).filter(StoredHole::stays).isEmpty();
    }

    /** What was left in its old hole is there since before. */
    private void leave(String hole, List<GreenDay> days) {
        asked.greens()
                .holes(hole)
                .now()
                .ifPresent(now -> days.set(
                        0,
                        new GreenDay(
                                days.get(0).ground(),
                                Wishes.stays(judging(hole).candidate(now.at()), now.cutOn())
                                        .in(days.get(0).wishes().areas()),
                                false)));
    }

    /** Of a draft: what the logbook knows, what is beyond the days that may be changed, and what stays until then. */
    private boolean isFrozen(String hole, int day) {
        if (plans.get(day).state() != State.DRAFT) {
            return false; // what is asked of such a day has it fixed already
        }
        if (day == 0 && cut(hole).isPresent() || day >= mayChange) {
            return true;
        }
        return mayChange < plans.size()
                && plans.get(mayChange)
                        .find(hole)
                        .flatMap(StoredHole::since)
                        .filter(since -> !since.isAfter(plans.get(day).date()))
                        .isPresent();
    }
}
