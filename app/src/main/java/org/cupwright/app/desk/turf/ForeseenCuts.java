package org.cupwright.app.desk.turf;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.cupwright.app.desk.log.DayLog;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.CupWork.CutSomewhere;
import org.cupwright.cupchange.CupWork.HoleMovedInPlay;
import org.cupwright.cupchange.CupWork.LeftInOldHole;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.PayloadKinds;

/**
 * Holes that were planned and of which nobody has said anything yet: they are taken to have been cut as planned, and
 * those that stay not to have been touched. As
 * soon as the logbook has a word on a hole, plans up to that day no longer count for it.
 */
final class ForeseenCuts {
    /** Kinds of facts that say where a hole is. */
    static final Set<String> WORDS_ON_A_HOLE =
            PayloadKinds.names(CupChanged.class, CutSomewhere.class, LeftInOldHole.class, HoleMovedInPlay.class);

    private final ZoneId zone;
    private final Map<String, LocalDate> lastWord = new HashMap<>();

    private ForeseenCuts(List<Fact> words, ZoneId zone) {
        this.zone = zone;
        for (Fact word : words) {
            word.hole().ifPresent(hole -> lastWord.put(hole, LocalDate.ofInstant(word.happenedAt(), zone)));
        }
    }

    /**
     * The facts that the logbook would have, had everybody written down what they did.
     *
     * @param words what the logbook says of the holes since the first plan, {@link #WORDS_ON_A_HOLE}
     */
    static List<Fact> of(List<StoredPlan> plans, List<Fact> words, ZoneId zone) {
        ForeseenCuts cuts = new ForeseenCuts(words, zone);
        List<Fact> foreseen = new ArrayList<>();
        for (StoredPlan plan : plans) {
            for (StoredHole hole : plan.holes()) {
                boolean cut = !hole.stays();
                if (cut && plan.date().isAfter(cuts.lastWord.getOrDefault(hole.hole(), LocalDate.MIN))) {
                    foreseen.add(cuts.fact(plan, hole));
                }
            }
        }
        return foreseen;
    }

    private Fact fact(StoredPlan plan, StoredHole hole) {
        Instant morning = DayLog.morning(plan.date(), zone);
        String name = "foreseen " + plan.courseId() + " " + hole.hole() + " " + plan.date();
        return new Fact(
                UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)),
                Fact.CURRENT_VERSION,
                morning,
                morning,
                Optional.empty(),
                "plan",
                plan.courseId(),
                Optional.of(hole.hole()),
                CupChanged.asPlanned(hole.position().judgement().position()));
    }
}
