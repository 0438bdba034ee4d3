package org.cupwright.app.office.green;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cupwright.app.answers.PositionText;
import org.cupwright.app.answers.ReasonText;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.green.GreenPlaces;
import org.cupwright.app.desk.green.JudgedGreen;
import org.cupwright.app.desk.plan.ShowHole;
import org.cupwright.app.session.Right;
import org.cupwright.app.storage.Asked;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.Judgement;
import org.cupwright.message.Message.Name;

/** What can be wanted of a hole on a day, and what was. */
record WishView(Visit visit, ShowHole.Answer stands, JudgedGreen green) {
    /** What is against the spot as far as its verdict says it already. */
    private static final Set<String> IN_THE_HEAD =
            Set.of("rotation.finding.care", "rotation.finding.difficultyUnknown");

    /**
     * The wishes.
     *
     * @param may whether whoever looks may want something, and the day takes it
     * @param seen the number of the plan that is looked at
     * @param said what was asked for until now
     * @param published whether the plan has to be withdrawn first
     * @param done whether the holes have been cut, so that nothing can be asked for
     * @param days for which days the hole can be put at the spot: where it is not there yet
     * @param lock the day of the plan that has the hole there, where it can be locked there
     * @param why the plan's reasons for the spot, if it is the plan's, and what stands against it
     */
    record Wishes(
            boolean may,
            long seen,
            List<String> said,
            boolean published,
            boolean done,
            List<Day> days,
            Optional<String> lock,
            List<String> why) {}

    /**
     * A day for which the hole can be set.
     *
     * @param value as the form carries it
     * @param says in words
     * @param shown whether it is the day that is looked at
     */
    record Day(String value, String says, boolean shown) {}

    Wishes wishes(Optional<MapPoint> at) {
        boolean planned = visit.may(Right.PLAN)
                && !stands.course().isPractice(stands.hole().id());
        Optional<State> state = stands.plan().map(StoredPlan::state);
        boolean there = at.isPresent() && stands.spot().equals(at);
        boolean may = planned && isOpen(stands);
        return new Wishes(
                may,
                stands.number(),
                stands.asked().stream().flatMap(this::said).toList(),
                planned && state.equals(Optional.of(State.PUBLISHED)),
                planned && state.equals(Optional.of(State.DONE)),
                planned ? at.map(this::days).orElse(List.of()) : List.of(),
                may && there ? lock() : Optional.empty(),
                there ? why(at.get()) : List.of());
    }

    private static boolean isOpen(ShowHole.Answer day) {
        return day.plan().filter(plan -> plan.state() != State.DRAFT).isEmpty();
    }

    /** The day that is looked at, today and tomorrow, as far as their plans can be changed and are another. */
    private List<Day> days(MapPoint at) {
        return Stream.of(visit.date(), visit.today(), visit.today().plusDays(1))
                .distinct()
                .sorted()
                .flatMap(date -> day(date, at).stream())
                .toList();
    }

    private Optional<Day> day(LocalDate date, MapPoint at) {
        boolean shown = date.equals(visit.date());
        ShowHole.Answer day = shown
                ? stands
                : new ShowHole(visit.session())
                        .of(DayQuestion.of(date), stands.hole().id());
        return Optional.of(day)
                .filter(WishView::isOpen)
                .filter(open -> !open.spot().equals(Optional.of(at)))
                .map(open -> new Day(new ForDay(date, open.number()).text(), says(date), shown));
    }

    private String says(LocalDate date) {
        Texts texts = visit.texts();
        if (date.equals(visit.today())) {
            return texts.say("green.set.today");
        }
        return date.equals(visit.today().plusDays(1)) ? texts.say("green.set.tomorrow") : texts.weekday(date);
    }

    /** What is planned and was not asked for stays only as long as nothing is planned anew. */
    private Optional<String> lock() {
        boolean free =
                stands.planned().filter(hole -> !hole.locked() && !hole.stays()).isPresent();
        return free && stands.cut().isEmpty()
                ? Optional.of(new ForDay(visit.date(), stands.number()).text())
                : Optional.empty();
    }

    private List<String> why(MapPoint at) {
        Texts texts = visit.texts();
        String hole = stands.hole().id();
        double pace = green.day().policy().get(PlacePolicy.PACE_METRES);
        Judgement spot = green.at(at).judgement();
        Stream<String> reasons = stands.planned().stream()
                .flatMap(planned -> new ReasonText(texts, pace).besideTheSummary(planned, spot).stream());
        Stream<String> against = stands.plan().stream()
                .flatMap(plan -> plan.findings().stream())
                .filter(finding -> !IN_THE_HEAD.contains(finding.key()))
                .filter(finding -> finding.arguments().stream().findFirst().equals(Optional.of(new Name(hole))))
                .map(texts::say);
        return Stream.concat(against, reasons).distinct().toList();
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
                                texts.length(off.radiusMetres()),
                                positions.of(places.find(hole, off.at()), off.at()))));
    }
}
