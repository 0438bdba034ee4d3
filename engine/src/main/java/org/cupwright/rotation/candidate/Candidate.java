package org.cupwright.rotation.candidate;

import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Lateral;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.green.Third;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.Verdict;

/**
 * A spot the rotation may choose for a day.
 *
 * @param judgement what the rules say, and where
 * @param place where that is on the green; empty without a line of play
 * @param goodWithinMetres how far off it the verdict is no worse; see {@link GreenSpots}
 * @param onSavedGround whether it lies on ground kept for a coming event
 */
public record Candidate(
        Judgement judgement, Optional<PlaceOnGreen> place, double goodWithinMetres, boolean onSavedGround) {
    public Candidate {
        if (!(goodWithinMetres >= 0)) {
            throw new IllegalArgumentException("good within " + goodWithinMetres + " m at " + judgement.position());
        }
    }

    public MapPoint at() {
        return judgement.position();
    }

    public Verdict verdict() {
        return judgement.verdict();
    }

    /** Whether a hole may be cut here: good, or to be used with care. */
    public boolean usable() {
        return verdict() == Verdict.PASS || verdict() == Verdict.CAUTION;
    }

    /** Whether a rule not set aside cannot tell for errors of measurement, and likelier refuses the spot than not. */
    public boolean doubtful() {
        return judgement.rules().stream()
                .filter(result -> !judgement.setAside().contains(result.rule()))
                .anyMatch(result -> result.leans().equals(Optional.of(Outcome.FAIL)));
    }

    public Optional<Third> third() {
        return place.map(PlaceOnGreen::third);
    }

    public Optional<Lateral> lateral() {
        return place.map(PlaceOnGreen::lateral);
    }

    public Optional<DifficultyClass> rank() {
        return judgement.difficulty().rank();
    }
}
