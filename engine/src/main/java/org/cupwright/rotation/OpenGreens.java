package org.cupwright.rotation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.rotation.candidate.Wishes;

/**
 * Sorts the greens of a day into those that can have a hole and those left out, and names what is out of the ordinary.
 */
final class OpenGreens {
    private final Aims aims;
    private final List<OpenGreen> greens = new ArrayList<>();
    private final List<Message> findings = new ArrayList<>();

    OpenGreens(DayRequest request, Aims aims) {
        this.aims = aims;
        for (GreenCandidates green : request.greens()) {
            List<Candidate> choosable = choosable(green);
            if (!choosable.isEmpty()) {
                greens.add(OpenGreen.of(green, choosable, aims, request.seed()));
            }
        }
    }

    List<OpenGreen> greens() {
        return List.copyOf(greens);
    }

    List<Message> findings() {
        return List.copyOf(findings);
    }

    private List<Candidate> choosable(GreenCandidates green) {
        Wishes wishes = green.wishes();
        if (wishes.closed()) {
            return leftOut("closed", green);
        }
        if (wishes.locked().isPresent()) {
            return locked(green, wishes.locked().get());
        }
        List<Candidate> usable =
                green.candidates().stream().filter(Candidate::usable).toList();
        if (usable.isEmpty()) {
            return leftOut("nothingUsable", green);
        }
        List<Candidate> permitted = usable.stream()
                .filter(one -> wishes.forbidden().stream().noneMatch(circle -> circle.holds(one.at())))
                .toList();
        if (permitted.isEmpty()) {
            return leftOut("allForbidden", green);
        }
        List<Candidate> unsaved = unlessNoneIsLeft(permitted, one -> !one.onSavedGround(), "savedGroundUsed", green);
        return unlessNoneIsLeft(unsaved, aims::allows, "thirdNotAllowed", green);
    }

    private List<Candidate> locked(GreenCandidates green, Candidate position) {
        if (!position.usable()) {
            name("lockedNotUsable", green);
        }
        if (position.onSavedGround()) {
            name("lockedOnSaved", green);
        }
        return List.of(position);
    }

    /**
     * What passes; where nothing does, all of it, and that is named: an answer always comes out, and no broken wish in
     * silence.
     */
    private List<Candidate> unlessNoneIsLeft(
            List<Candidate> candidates, Predicate<Candidate> wish, String finding, GreenCandidates green) {
        List<Candidate> passing = candidates.stream().filter(wish).toList();
        if (!passing.isEmpty()) {
            return passing;
        }
        name(finding, green);
        return candidates;
    }

    private List<Candidate> leftOut(String finding, GreenCandidates green) {
        name(finding, green);
        return List.of();
    }

    private void name(String finding, GreenCandidates green) {
        findings.add(Message.of("rotation.finding." + finding, new Name(green.hole())));
    }
}
