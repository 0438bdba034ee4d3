package org.cupwright.app.desk.round;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cupwright.app.storage.DayRound;
import org.cupwright.app.storage.DayRound.Share;
import org.cupwright.app.storage.DayRound.Shares;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.Versions.Part;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.Loop;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Translated;
import org.cupwright.policy.EnumNames;
import org.cupwright.policy.Policy;
import org.cupwright.round.DayStart;
import org.cupwright.round.RoundOrder;

/**
 * The round of a day.
 *
 * @param course the course
 * @param date the day
 * @param said what was said of the day itself; empty where nothing was
 * @param seen its number; 0: nothing was said
 * @param start how play begins
 * @param order in which order and by when the holes are to be cut
 * @param shares who cuts which holes; nobody is named where one person has them all
 */
public record RoundOfDay(
        Course course,
        LocalDate date,
        Optional<DayRound> said,
        long seen,
        DayStart start,
        RoundOrder order,
        Shares shares) {
    /** A day as it stands: what was not said of it is as usual, and as on the last day that began so. */
    public static RoundOfDay of(Stores stores, Course course, LocalDate date, Policy policy) {
        Optional<DayRound> said = stores.rounds().find(course.id(), date);
        DayStart start = said.flatMap(DayRound::start).orElseGet(() -> DayStart.usual(policy));
        Shares shares = said.flatMap(DayRound::given)
                .orElseGet(() -> stores.rounds()
                        .lastGiven(course.id(), date, start.type())
                        .flatMap(DayRound::given)
                        .map(given -> stillHere(stores, given))
                        .orElse(Shares.NONE));
        return new RoundOfDay(
                course,
                date,
                said,
                stores.versions(course.id(), date).of(Part.ROUND),
                start,
                RoundOrder.of(course, start, policy),
                onCourse(shares, course));
    }

    /** Whoever may come in no more has nothing of a new day. */
    private static Shares stillHere(Stores stores, Shares shares) {
        return new Shares(shares.all().stream()
                .filter(share -> stores.people()
                        .named(share.person())
                        .map(KeptPerson::active)
                        .orElse(true))
                .toList());
    }

    private static Shares onCourse(Shares shares, Course course) {
        return new Shares(shares.all().stream()
                .map(share -> new Share(
                        share.person(),
                        share.holes().stream()
                                .filter(hole -> course.find(hole).isPresent())
                                .toList()))
                .filter(share -> !share.holes().isEmpty())
                .toList());
    }

    /** Whether there is anything to tell of it. */
    public boolean tells() {
        return start.tells() || isShared();
    }

    /** Whether anybody was named. */
    public boolean isShared() {
        return !shares.all().isEmpty();
    }

    /** When a hole is to be ready; empty where no first group's time is known. */
    public Optional<LocalTime> cutBy(String hole) {
        return order.findCutBy(hole);
    }

    /** The holes of the round that nobody has, where others have somebody. */
    public List<String> nobodys() {
        return course.round().stream()
                .map(Hole::id)
                .filter(hole -> isShared() && shares.who(hole).isEmpty())
                .toList();
    }

    /** The course's parts, each with its holes as they are gone to: one person's after another's. */
    public List<Loop> parts() {
        List<String> people = shares.all().stream().map(Share::person).toList();
        Comparator<String> byPerson = Comparator.comparing(
                hole -> shares.who(hole).map(people::indexOf).orElse(people.size()));
        return order.parts().stream()
                .map(part -> new Loop(
                        part.name(), part.holes().stream().sorted(byPerson).toList(), part.practice()))
                .toList();
    }

    /** Holes as they are told: {@code 1–9, 14}. */
    public String told(List<String> holes) {
        return new TypedHoles(course).told(holes);
    }

    /** What there is to tell of it, in the order in which it is told. */
    public List<Message> says() {
        List<Message> says = new ArrayList<>();
        if (start.tells()) {
            says.add(startSays());
        }
        if (start.frostMinutes() > 0) {
            says.add(Message.of("roundOf.frost", new Count(start.frostMinutes())));
        }
        shares.all()
                .forEach(share ->
                        says.add(Message.of("roundOf.share", new Name(share.person()), new Name(told(share.holes())))));
        if (!nobodys().isEmpty()) {
            says.add(Message.of("roundOf.nobody", new Name(told(nobodys()))));
        }
        return says;
    }

    private Message startSays() {
        Translated type = new Translated("roundOf.start." + EnumNames.lowerCamel(start.type()));
        String times = start.firstGroups().stream().map(LocalTime::toString).collect(Collectors.joining(", "));
        return times.isEmpty()
                ? Message.of("roundOf.start", type)
                : Message.of("roundOf.startAt", type, new Name(times));
    }
}
