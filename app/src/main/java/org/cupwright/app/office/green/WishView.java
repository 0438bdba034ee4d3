package org.cupwright.app.office.green;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.app.answers.PositionText;
import org.cupwright.app.desk.green.GreenPlaces;
import org.cupwright.app.desk.green.JudgedGreen;
import org.cupwright.app.desk.plan.ShowHole;
import org.cupwright.app.office.visit.Visit;
import org.cupwright.app.session.Right;
import org.cupwright.app.storage.Asked;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlacePolicy;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;

/** What can be wanted of a hole on a day, and what was. */
record WishView(Visit visit, ShowHole.Answer stands, JudgedGreen green) {
    /**
     * The wishes.
     *
     * @param may whether whoever looks may want something, and the day takes it
     * @param seen the number of the plan that is looked at
     * @param said what was asked for until now
     * @param published whether the plan has to be withdrawn first
     * @param done whether the holes have been cut, so that nothing can be asked for
     * @param here whether the hole can be put at the spot: it is not there yet
     * @param set what to press to have it there
     * @param why the plan's reasons for the spot, if it is the plan's, and what stands against it
     */
    record Wishes(
            boolean may,
            long seen,
            List<String> said,
            boolean published,
            boolean done,
            boolean here,
            String set,
            List<String> why) {}

    Wishes wishes(Optional<MapPoint> at) {
        Texts texts = visit.texts();
        boolean planned = visit.may(Right.PLAN)
                && !stands.course().isPractice(stands.hole().id());
        Optional<State> state = stands.plan().map(StoredPlan::state);
        boolean open = state.filter(known -> known != State.DRAFT).isEmpty();
        boolean there = at.isPresent() && stands.spot().equals(at);
        return new Wishes(
                planned && open,
                stands.number(),
                stands.asked().stream().flatMap(this::said).toList(),
                planned && state.equals(Optional.of(State.PUBLISHED)),
                planned && state.equals(Optional.of(State.DONE)),
                at.isPresent() && !there,
                visit.date().equals(visit.today())
                        ? texts.say("green.set.today")
                        : texts.say("green.set.day", texts.weekday(visit.date())),
                there ? why() : List.of());
    }

    private List<String> why() {
        String hole = stands.hole().id();
        Stream<Message> reasons = stands.planned().stream().flatMap(planned -> planned.reasons().stream());
        Stream<Message> against = stands.plan().stream()
                .flatMap(plan -> plan.findings().stream())
                .filter(finding -> finding.arguments().stream().findFirst().equals(Optional.of(new Name(hole))));
        return Stream.concat(against, reasons)
                .map(visit.texts()::say)
                .distinct()
                .toList();
    }

    private Stream<String> said(Asked asked) {
        Texts texts = visit.texts();
        double pace = green.day().policy().get(PlacePolicy.PACE_METRES);
        PositionText positions = new PositionText(texts, pace);
        GreenPlaces places = new GreenPlaces(stands.course(), green.day().policy());
        String hole = stands.hole().id();
        return Stream.concat(
                asked.at().stream()
                        .map(at ->
                                texts.say("green.wish.here", positions.of(places.find(hole, at), at), asked.person())),
                asked.notHere().stream()
                        .map(off -> texts.say(
                                "green.wish.notHere",
                                positions.paces(off.radiusMetres()),
                                positions.of(places.find(hole, off.at()), off.at()))));
    }
}
