package org.cupwright.app.desk.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.app.storage.Asked;
import org.cupwright.app.storage.PlanChange;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.Stores;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Name;

/** What became of plans since they were read: what somebody else did with them. */
record PlansMeanwhile(Stores stores, String courseId) {
    /** One sentence for each day whose plan is another now. */
    List<Message> since(List<StoredPlan> read) {
        List<Message> said = new ArrayList<>();
        for (StoredPlan before : read) {
            stores.plans()
                    .find(courseId, before.date())
                    .filter(now -> !now.in(before.state()).equals(before)
                            || now.state() != before.state() && before.state() != StoredPlan.State.DONE)
                    .ifPresent(now -> said.add(told(before, now)));
        }
        return said;
    }

    static Message told(StoredPlan before, StoredPlan now) {
        List<String> holes = Stream.concat(before.holes().stream(), now.holes().stream())
                .map(hole -> hole.hole())
                .distinct()
                .filter(hole -> !place(before, hole).equals(place(now, hole)))
                .toList();
        Day day = new Day(now.date());
        if (holes.isEmpty()) {
            return Message.of("meanwhile.sameHoles", day);
        }
        Optional<String> by = now.change()
                .filter(change -> !before.change().equals(now.change()))
                .map(PlanChange::person)
                .or(() -> asked(before, now));
        Name moved = new Name(String.join(", ", holes));
        return by.map(person -> Message.of("meanwhile.holesBy", day, moved, new Name(person)))
                .orElseGet(() -> Message.of("meanwhile.holes", day, moved));
    }

    /** Who asked for something since, where that was one person. */
    private static Optional<String> asked(StoredPlan before, StoredPlan now) {
        List<String> people = now.asked().stream()
                .filter(one -> !before.asked().contains(one))
                .map(Asked::person)
                .distinct()
                .toList();
        return people.size() == 1 ? Optional.of(people.get(0)) : Optional.empty();
    }

    private static Optional<?> place(StoredPlan plan, String hole) {
        return plan.find(hole).map(planned -> planned.position().judgement().position());
    }
}
