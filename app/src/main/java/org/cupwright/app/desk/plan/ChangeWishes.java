package org.cupwright.app.desk.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.log.HolesCut;
import org.cupwright.app.desk.plan.ChangeAsked.OnDay;
import org.cupwright.app.desk.plan.ChangeAsked.Spoiled;
import org.cupwright.app.desk.plan.ChangeAsked.Swap;
import org.cupwright.app.storage.Asked;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.course.MapPoint;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** Puts what a person wants otherwise to the days that are planned. */
final class ChangeWishes {
    /** So much ground about a spoiled spot is kept free of holes: our choice, a man's reach about it. */
    static final double SPOILED_METRES = 1;

    private final Stores stores;
    private final Course course;
    private final List<StoredPlan> plans;
    private final List<AskedOfDay> asked;
    private final Optional<HolesCut> today;
    private final int mayChange;
    private final String person;
    private final List<Asked.Circle> spoiled = new ArrayList<>();

    /**
     * @param plans the plans of the days, in order
     * @param asked what was asked for each until now
     * @param today what the logbook says of the holes of the first day, where that is today
     * @param mayChange how many of the days may be changed
     */
    ChangeWishes(
            Stores stores,
            Course course,
            List<StoredPlan> plans,
            List<AskedOfDay> asked,
            Optional<HolesCut> today,
            int mayChange,
            String person) {
        this.stores = stores;
        this.course = course;
        this.plans = plans;
        this.asked = asked;
        this.today = today;
        this.mayChange = mayChange;
        this.person = person;
    }

    void add(ChangeAsked all) {
        all.swaps().forEach(this::swap);
        all.spoiled().forEach(this::spoil);
        all.wishes().forEach(this::wish);
    }

    /** The ground that is spoiled. */
    List<Asked.Circle> spoiled() {
        return List.copyOf(spoiled);
    }

    private void wish(OnDay wanted) {
        boolean firstDay = wanted.wish() instanceof HoleWish.Here;
        if (wanted.day().isPresent() || firstDay) {
            int day = wanted.day()
                    .map(date -> day(date, wanted.wish().hole()))
                    .orElseGet(() -> first(wanted.wish().hole()));
            asked.get(day).add(wanted.wish(), person);
        } else {
            onEveryDay(wanted.wish());
        }
    }

    private void onEveryDay(HoleWish wish) {
        HoleChoice.hole(course, wish.hole());
        IntStream.range(0, mayChange)
                .filter(day -> plans.get(day).state() == State.DRAFT)
                .forEach(day -> asked.get(day).add(wish, person));
    }

    private void swap(Swap swap) {
        int one = day(swap.one(), swap.hole());
        int other = day(swap.other(), swap.hole());
        MapPoint here = at(one, swap.hole());
        MapPoint there = at(other, swap.hole());
        asked.get(one).add(new HoleWish.Here(swap.hole(), new Spot.At(there)), person);
        asked.get(other).add(new HoleWish.Here(swap.hole(), new Spot.At(here)), person);
    }

    private void spoil(Spoiled spot) {
        String hole = HoleChoice.hole(course, spot.hole()).id();
        int day = spot.day().map(this::day).orElse(0);
        Asked.Circle ground = new Asked.Circle(at(day, hole), SPOILED_METRES);
        spoiled.add(ground);
        onEveryDay(new HoleWish.NotHere(hole, new Spot.At(ground.at()), SPOILED_METRES));
    }

    private MapPoint at(int day, String hole) {
        StoredPlan plan = plans.get(day);
        StoredHole planned =
                plan.find(HoleChoice.hole(course, hole).id()).orElseThrow(() -> PlanChoice.leftOut(hole, plan.date()));
        return planned.position().judgement().position();
    }

    /** The first day whose plan may be changed and whose hole is not cut yet. */
    private int first(String hole) {
        String id = HoleChoice.hole(course, hole).id();
        return IntStream.range(0, mayChange)
                .filter(day -> plans.get(day).state() == State.DRAFT && !(day == 0 && isCut(id)))
                .findFirst()
                .orElseThrow(() -> published(plans.get(0)));
    }

    private boolean isCut(String hole) {
        return today.flatMap(cut -> cut.find(hole)).isPresent();
    }

    private int day(LocalDate date, String hole) {
        int day = day(date);
        if (plans.get(day).state() != State.DRAFT) {
            throw published(plans.get(day));
        }
        if (day >= mayChange) {
            throw Problem.of("dayMayNotChange", "days", mayChange, new Day(date), new Count(mayChange));
        }
        String id = HoleChoice.hole(course, hole).id();
        if (day == 0 && isCut(id)) {
            throw Problem.of("holeIsCut", "hole", id, new Name(id), new Day(date));
        }
        return day;
    }

    private int day(LocalDate date) {
        return IntStream.range(0, plans.size())
                .filter(day -> plans.get(day).date().equals(date))
                .findFirst()
                .orElseThrow(() -> PlanChoice.none(stores, course, date));
    }

    private static Problem published(StoredPlan plan) {
        return PlanDay.stands(plan);
    }
}
