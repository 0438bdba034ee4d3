package org.cupwright.app.desk.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.cupwright.app.desk.green.GreensOfDay;
import org.cupwright.app.desk.green.Judging;
import org.cupwright.app.storage.Asked;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.Third;
import org.cupwright.rotation.SchemePolicy;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.cupwright.rotation.weeks.GreenDay;
import org.cupwright.rotation.weeks.GreenWeeks;
import org.cupwright.rotation.weeks.PastHole;
import org.cupwright.rotation.weeks.RestDays;
import org.cupwright.rotation.weeks.WeeksRequest;
import org.cupwright.turf.state.HolesOnGreen;
import org.cupwright.turf.today.Clocks;

/**
 * What a plan of weeks may choose from, with what people asked for and what stands.
 *
 * @param greens the greens as the first day finds them
 * @param judged the same, judged with nothing lying on them
 * @param days the days to be planned
 */
record WeeksAsked(GreensOfDay greens, Map<String, Judging> judged, List<WeekDay> days) {
    /**
     * One day to be planned.
     *
     * @param asked what people asked for it
     * @param stands its plan, where that is published: its holes stay
     */
    record WeekDay(LocalDate date, AskedOfDay asked, Optional<StoredPlan> stands) {}

    WeeksRequest request(long seed) {
        Clocks clocks = new Clocks(greens.turf());
        return new WeeksRequest(
                days.stream().map(WeekDay::date).toList(),
                greens.day().course().round().stream().map(this::green).toList(),
                PlanDay.sharedGreens(greens.day().course()),
                new RestDays(clocks::restsUntil, clocks::plugShowsUntil),
                Set.of(),
                seed);
    }

    private GreenWeeks green(Hole hole) {
        List<GreenDay> known = IntStream.range(0, days.size())
                .mapToObj(day -> known(hole, day))
                .toList();
        Optional<Third> roughly = greens.roughly(hole.id())
                .map(rough -> Third.valueOf(rough.part().depth().name()));
        return new GreenWeeks(
                hole.id(),
                judged.get(hole.id()).candidatesForWeeks(),
                judged.get(hole.id()).easedForWeeks(),
                past(greens.holes(hole.id())),
                roughly,
                known);
    }

    private GreenDay known(Hole hole, int number) {
        WeekDay day = days.get(number);
        GroundOnDay ground = greens.withoutHoles(hole, day.date());
        Wishes wishes = wishes(hole.id(), day);
        Optional<StoredHole> published = day.stands().flatMap(plan -> plan.find(hole.id()));
        if (day.stands().isPresent() || wishes.closed()) {
            boolean stays = published.filter(StoredHole::stays).isPresent();
            return new GreenDay(ground, wishes, !stays);
        }
        Asked wanted = day.asked().of(hole.id());
        if (number == 0) {
            return new StayingHole(greens, hole, day.date())
                    .wishes(judged.get(hole.id()), ground, wanted)
                    .map(stays -> new GreenDay(ground, stays.in(greens.areas(hole.id(), day.date())), false))
                    .orElseGet(() -> new GreenDay(ground, wishes));
        }
        boolean changes = SchemePolicy.changes(greens.day().policy(), hole.id(), day.date());
        Optional<Wishes> until =
                untilPublished(hole.id(), number).filter(bound -> wanted.at().isEmpty());
        return new GreenDay(ground, until.orElse(wishes), changes || wanted.at().isPresent());
    }

    /** A hole that a published day has since before: it was promised for the days until then too. */
    private Optional<Wishes> untilPublished(String hole, int number) {
        return days.subList(number + 1, days.size()).stream()
                .flatMap(day -> day.stands().stream())
                .findFirst()
                .flatMap(plan -> plan.find(hole))
                .filter(kept -> kept.since()
                        .filter(cut -> !cut.isAfter(days.get(number).date()))
                        .isPresent())
                .map(kept -> locked(hole, position(kept)));
    }

    private static List<PastHole> past(HolesOnGreen holes) {
        List<PastHole> past = new ArrayList<>();
        holes.old().forEach(old -> past.add(new PastHole(old.at(), old.cutOn(), Optional.of(old.leftOn()))));
        holes.now().ifPresent(now -> past.add(new PastHole(now.at(), now.cutOn(), Optional.empty())));
        return past;
    }

    /** A published day is as it is: its holes stay, and greens that it leaves out have none. */
    private Wishes wishes(String hole, WeekDay day) {
        if (day.stands().isPresent()) {
            return day.stands()
                    .flatMap(plan -> plan.find(hole))
                    .map(kept -> locked(hole, position(kept)))
                    .orElse(Wishes.greenClosed());
        }
        if (greens.temporaryGreen(hole)) {
            return Wishes.greenClosed();
        }
        Asked wanted = day.asked().of(hole);
        List<Wishes.Circle> notHere = wanted.notHere().stream()
                .map(ground -> new Wishes.Circle(ground.at(), ground.radiusMetres()))
                .toList();
        Optional<Candidate> at = wanted.at().map(judged.get(hole)::candidate);
        return new Wishes(at, notHere, false).in(greens.areas(hole, day.date()));
    }

    private Wishes locked(String hole, MapPoint at) {
        return new Wishes(Optional.of(judged.get(hole).candidate(at)), List.of(), false);
    }

    private static MapPoint position(StoredHole hole) {
        return hole.position().judgement().position();
    }
}
