package org.cupwright.app.desk.round;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.DayRound;
import org.cupwright.app.storage.DayRound.Shares;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Said;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;
import org.cupwright.round.DayStart;

/** Says for one day how play begins, and who cuts which holes. */
public record GiveHoles(Session session) {
    /** The round as it stands, its course and the settings of the day. */
    private record Standing(Stores stores, RoundOfDay round, Policy policy) {}

    public RoundOfDay show(Optional<LocalDate> date) {
        return session.read(stores -> standing(stores, date).round());
    }

    /** Changes what is named, upon what stands now; all else stays as it is. */
    public RoundOfDay change(Optional<LocalDate> date, RoundWish wish) {
        return session.decide(Right.PLAN, stores -> kept(standing(stores, date), standing -> changed(standing, wish)));
    }

    /** Takes back all that was said of the day. */
    public RoundOfDay asUsual(Optional<LocalDate> date) {
        return session.decide(
                Right.PLAN,
                stores -> kept(standing(stores, date), standing -> {
                    DayStart usual = DayStart.usual(standing.policy());
                    return new DayRound(person(), Optional.empty(), usual.type(), Optional.empty());
                }));
    }

    /**
     * Says all of it anew for somebody who has looked at it.
     *
     * @param seen its number when it was looked at
     * @param whole how play begins, and everybody who is to have holes
     * @throws Problem when it is another by now: with what it is
     */
    public RoundOfDay set(LocalDate day, long seen, RoundWish whole) {
        return session.decide(Right.PLAN, stores -> {
            Standing standing = standing(stores, Optional.of(day));
            if (standing.round().seen() != seen) {
                throw changedMeanwhile(standing.round());
            }
            return kept(standing, before -> {
                DayStart start = TypedStart.of(whole, before.round().start());
                Shares shares = new Sharing(before.stores(), before.round().course()).of(Shares.NONE, whole);
                return round(before, start, Optional.of(shares));
            });
        });
    }

    private Standing standing(Stores stores, Optional<LocalDate> date) {
        Course course = session.course(stores);
        LocalDate day = date.orElseGet(() -> CourseToday.of(course, session.clock()));
        Policy policy = stores.policies().history(course.id()).at(day);
        return new Standing(stores, RoundOfDay.of(stores, course, day, policy), policy);
    }

    private DayRound changed(Standing standing, RoundWish wish) {
        RoundOfDay before = standing.round();
        DayStart start = wish.isOfStart() ? TypedStart.of(wish, before.start()) : before.start();
        Optional<Shares> shares = wish.isOfPeople()
                ? Optional.of(new Sharing(standing.stores(), before.course()).of(before.shares(), wish))
                : before.said().flatMap(DayRound::given);
        return round(standing, start, shares);
    }

    private DayRound round(Standing standing, DayStart start, Optional<Shares> shares) {
        Optional<DayStart> own = Optional.of(start).filter(said -> !said.equals(DayStart.usual(standing.policy())));
        return new DayRound(person(), own, start.type(), shares);
    }

    private String person() {
        return session.person().name();
    }

    private RoundOfDay kept(Standing standing, Function<Standing, DayRound> wanted) {
        RoundOfDay before = standing.round();
        standing.stores().rounds().add(before.course().id(), before.date(), wanted.apply(standing));
        return RoundOfDay.of(standing.stores(), before.course(), before.date(), standing.policy());
    }

    private static Problem changedMeanwhile(RoundOfDay now) {
        List<Message> says = now.says();
        Name by = new Name(now.said().map(DayRound::person).orElse(""));
        Said said = new Said(says.isEmpty() ? List.of(Message.of("roundOf.nothing")) : says);
        return Problem.of(
                Message.of("problem.roundChanged", new Day(now.date()), by, said), Message.of("try.roundChanged"));
    }
}
