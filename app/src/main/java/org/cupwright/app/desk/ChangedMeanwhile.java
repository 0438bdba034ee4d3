package org.cupwright.app.desk;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.Versions;
import org.cupwright.app.storage.Versions.Part;
import org.cupwright.cupchange.Fact;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Said;
import org.cupwright.message.Message.Translated;
import org.cupwright.message.Problem;
import org.cupwright.policy.PolicyChange;

/**
 * What changed while something long was worked out, with its cause.
 *
 * @param before how far things had come when it began
 * @param now how far they are
 */
public record ChangedMeanwhile(Stores stores, String courseId, Versions before, Versions now) {
    /**
     * Refuses what rests on things that are no longer so.
     *
     * @throws Problem that says what changed, and by what
     */
    public void refuse(Part... restsOn) {
        refuse(List.of(), restsOn);
    }

    /**
     * The same.
     *
     * @param deeds what else can be said of what was done
     */
    public void refuse(List<Message> deeds, Part... restsOn) {
        Set<Part> changed = EnumSet.noneOf(Part.class);
        changed.addAll(List.of(restsOn));
        changed.retainAll(now.changedSince(before));
        if (!changed.isEmpty()) {
            List<Message> causes =
                    new ArrayList<>(changed.stream().map(this::cause).toList());
            causes.addAll(deeds);
            Said said = new Said(causes);
            throw new Problem(
                    Message.of("problem.changedMeanwhile", said),
                    List.of(),
                    new Name(""),
                    Message.of("try.changedMeanwhile"));
        }
    }

    private Message cause(Part part) {
        String key = "meanwhile." + part.name().toLowerCase(Locale.ROOT);
        if (part != Part.POLICY) {
            return Message.of(key);
        }
        List<PolicyChange> all = stores.policies().history(courseId).changes();
        return Message.of(key, new Name(all.get(all.size() - 1).key()));
    }

    /** What came into the logbook of the course meanwhile, which the work has not seen: one sentence each. */
    public List<Message> entries() {
        List<Message> said = new ArrayList<>();
        for (Fact fact : stores.facts().receivedAfter(courseId, before.of(Part.LOGBOOK))) {
            Translated kind = new Translated("log.kind." + fact.payload().kind());
            said.add(Message.of("meanwhile.entry", kind, new Name(fact.hole().orElse("–")), new Name(fact.person())));
        }
        return said;
    }
}
