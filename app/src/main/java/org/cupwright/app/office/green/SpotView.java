package org.cupwright.app.office.green;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cupwright.app.answers.JudgementText;
import org.cupwright.app.answers.ToldPosition;
import org.cupwright.app.desk.green.JudgedGreen;
import org.cupwright.app.desk.plan.ShowHole;
import org.cupwright.app.maps.MapFrame;
import org.cupwright.app.maps.SpotMarks;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.visit.GroundUnit;
import org.cupwright.app.visit.Told;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlacePolicy;
import org.cupwright.message.Problem;

/** What there is to say of the spot that is asked about; of the day's spot where none is. */
record SpotView(
        Visit visit,
        ShowHole.Answer stands,
        JudgedGreen green,
        AskedOfGreen wanted,
        MapFrame frame,
        LevelView.Shown level) {
    /** How hard a ball is rolled where nobody says: our choice. */
    private static final int USUAL_PACES = 6;

    /** How far about a spot a hole is kept off, and ground is closed, where nobody says: our choice. */
    private static final int KEPT_OFF_PACES = 3;

    private static final int CLOSED_PACES = 2;

    /** The gravest first. */
    private static final List<String> GRAVEST = List.of("fail", "caution", "notChecked", "setAside", "pass");

    /**
     * The part of the page.
     *
     * @param hole the hole's name
     * @param problem why nothing can be said
     * @param asked the spot that is asked about
     * @param held the spot it is held against
     * @param compared both by every rule; none unless there are two
     * @param better the nearest better spot
     * @param begin spots to begin with, where there is neither an asked spot nor the day's
     * @param wishes what can be wanted of the spot
     * @param ways which ways a ball can be rolled; none where that cannot be worked out
     * @param rolled the ball that was rolled
     * @param far how hard, as it is typed
     * @param lengths what stands in the fields of lengths before anybody types
     * @param level where to lay the level, if that is asked for
     * @param playKnown whether there are a front and a left
     * @param ground what can be said of the ground
     * @param marks what is drawn over the picture
     */
    record Part(
            String hole,
            Optional<Told> problem,
            Optional<Judged> asked,
            Optional<Judged> held,
            List<Compared> compared,
            Optional<Judged> better,
            List<Judged> begin,
            WishView.Wishes wishes,
            List<RollView.Way> ways,
            Optional<RollView.Rolled> rolled,
            String far,
            Lengths lengths,
            LevelView.Shown level,
            boolean playKnown,
            GroundView.Ground ground,
            String marks) {
        /** What somebody hears who does not see the page. */
        public String heard() {
            return problem.map(Told::what)
                    .orElseGet(() -> asked.map(one ->
                                    one.told().where() + ": " + one.told().summary())
                            .orElse(""));
        }
    }

    /**
     * What stands in the fields of lengths before anybody types.
     *
     * @param unit the word behind the fields
     * @param keepOff how far about a spot a hole is kept off
     * @param closed how far about it ground is closed
     */
    record Lengths(String unit, String keepOff, String closed) {}

    /**
     * A judged spot.
     *
     * @param at the spot as it is given in addresses
     * @param todays whether it is where the hole is, or is to be
     * @param told what there is to say
     * @param rules its rules, the gravest first
     */
    record Judged(String at, boolean todays, ToldPosition told, List<ToldPosition.Rule> rules) {}

    /** One rule at two spots. */
    record Compared(String name, ToldPosition.Rule held, ToldPosition.Rule asked) {}

    Part part() {
        Optional<Told> problem = Optional.empty();
        Optional<JudgedPosition> asked = Optional.empty();
        Optional<JudgedPosition> held = Optional.empty();
        Optional<RollView.Rolled> rolled = Optional.empty();
        try {
            asked = wanted.spot(stands.hole())
                    .map(green::point)
                    .map(this::exactly)
                    .or(this::todays)
                    .map(green::at);
            held = wanted.held().map(green::point).map(green::at);
            rolled = new RollView(visit, stands, green, wanted).rolled(asked.map(SpotView::point));
        } catch (Problem wrong) {
            problem = Optional.of(Told.of(wrong, visit.texts()));
        }
        Optional<JudgedPosition> better = asked.flatMap(green::betterNear);
        SpotMarks marks = new SpotMarks(
                asked.map(SpotView::point).filter(at -> !todays(at)),
                held.map(SpotView::point),
                better.map(SpotView::point),
                level.round().map(LevelView.Round::places).orElse(List.of()),
                rolled.map(RollView.Rolled::path).orElse(List.of()));
        return new Part(
                stands.hole().id(),
                problem,
                asked.map(this::judged),
                held.map(this::judged),
                compared(held, asked),
                better.map(this::judged),
                asked.isEmpty() && problem.isEmpty() ? begin() : List.of(),
                new WishView(visit, stands, green).wishes(asked.map(SpotView::point)),
                new RollView(visit, stands, green, wanted).ways(),
                rolled,
                wanted.far() == null ? visit.unit().usual(USUAL_PACES) : wanted.far(),
                lengths(),
                level,
                stands.hole().lineOfPlay().isPresent(),
                new GroundView(visit).ground(),
                marks.drawn(frame));
    }

    /** Where the hole is, or is to be, as long as that is on the green. */
    private Optional<MapPoint> todays() {
        return stands.spot().filter(stands.hole().green()::contains);
    }

    /** The day's spot where that is meant: addresses give it a little off. */
    private MapPoint exactly(MapPoint asked) {
        return todays().filter(spot -> AskedOfGreen.at(spot).equals(AskedOfGreen.at(asked)))
                .orElse(asked);
    }

    private Lengths lengths() {
        GroundUnit unit = visit.unit();
        return new Lengths(visit.texts().say(unit.key()), unit.usual(KEPT_OFF_PACES), unit.usual(CLOSED_PACES));
    }

    private boolean todays(MapPoint at) {
        return stands.spot().filter(at::equals).isPresent();
    }

    private static MapPoint point(JudgedPosition position) {
        return position.judgement().position();
    }

    private List<Judged> begin() {
        return green.best().stream().map(this::judged).toList();
    }

    private Judged judged(JudgedPosition position) {
        double pace = green.day().policy().get(PlacePolicy.PACE_METRES);
        ToldPosition told = new JudgementText(visit.texts(), pace).told(position);
        List<ToldPosition.Rule> rules = told.rules().stream()
                .sorted(Comparator.comparing(rule -> GRAVEST.indexOf(rule.key())))
                .toList();
        return new Judged(AskedOfGreen.at(point(position)), todays(point(position)), told, rules);
    }

    private List<Compared> compared(Optional<JudgedPosition> held, Optional<JudgedPosition> asked) {
        if (held.isEmpty() || asked.isEmpty() || point(held.get()).equals(point(asked.get()))) {
            return List.of();
        }
        List<ToldPosition.Rule> one = judged(held.get()).told().rules();
        List<ToldPosition.Rule> other = judged(asked.get()).told().rules();
        return IntStream.range(0, one.size())
                .mapToObj(i -> new Compared(one.get(i).name(), one.get(i), other.get(i)))
                .toList();
    }
}
