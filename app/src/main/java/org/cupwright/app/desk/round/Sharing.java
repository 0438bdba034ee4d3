package org.cupwright.app.desk.round;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.cupwright.app.storage.DayRound.Share;
import org.cupwright.app.storage.DayRound.Shares;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.NameKey;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** Gives holes to people: each hole has one person at most. */
record Sharing(Stores stores, Course course) {
    /** Our choice: what fits beside a hole. */
    private static final int LONGEST_NAME = 60;

    /** What people have after what is wanted; whoever has nothing any more is not named. */
    Shares of(Shares before, RoundWish wish) {
        Set<String> people = new LinkedHashSet<>();
        Map<String, String> who = new HashMap<>();
        before.all().forEach(share -> {
            people.add(share.person());
            share.holes().forEach(hole -> who.put(hole, share.person()));
        });
        who.putAll(wanted(wish, people));
        TypedHoles typed = new TypedHoles(course);
        wish.nobody().forEach(holes -> typed.read(holes).forEach(who::remove));
        return new Shares(people.stream()
                .map(person -> new Share(
                        person,
                        course.holes().stream()
                                .map(Hole::id)
                                .filter(hole -> person.equals(who.get(hole)))
                                .toList()))
                .filter(share -> !share.holes().isEmpty())
                .toList());
    }

    private Map<String, String> wanted(RoundWish wish, Set<String> people) {
        TypedHoles typed = new TypedHoles(course);
        Map<String, String> wanted = new HashMap<>();
        for (RoundWish.Give give : wish.give()) {
            String person = name(give.person());
            people.add(person);
            for (String hole : typed.read(give.holes())) {
                String other = wanted.put(hole, person);
                if (other != null && !other.equals(person)) {
                    throw Problem.of("givenTwice", "give", hole, new Name(hole), new Name(other), new Name(person));
                }
            }
        }
        return wanted;
    }

    /** Whoever has an account is called as there, so that it is found on that person's telephone. */
    private String name(String typed) {
        String name = typed.replaceAll("\\p{Zs}+", " ").strip();
        return stores.people().named(name).map(KeptPerson::name).orElseGet(() -> {
            boolean seen = NameKey.isSeen(name) && name.codePoints().anyMatch(Character::isLetterOrDigit);
            if (!seen || name.codePointCount(0, name.length()) > LONGEST_NAME) {
                throw Problem.of("giveName", "give", typed);
            }
            return name;
        });
    }
}
