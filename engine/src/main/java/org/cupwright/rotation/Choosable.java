package org.cupwright.rotation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Argument;
import org.cupwright.message.Message.Name;
import org.cupwright.rotation.candidate.Area;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.rotation.candidate.Wishes;

/**
 * What may be chosen on one green on one day.
 *
 * @param candidates what may be; none where the green is left out
 * @param findings what is out of the ordinary
 */
public record Choosable(List<Candidate> candidates, List<Message> findings) {
    public Choosable {
        candidates = List.copyOf(candidates);
        findings = List.copyOf(findings);
    }

    public static Choosable of(GreenCandidates green, Aims aims) {
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
        Choosable off = new Choosable(permitted, List.of())
                .unlessNoneIsLeft(one -> !one.onSavedGround(), "savedGroundUsed", green)
                .unlessNoneIsLeft(one -> aims.allows(green.hole(), one), "thirdNotAllowed", green);
        return wishes.areas().isEmpty()
                ? off
                : off.unlessNoneIsLeft(
                        one -> wishes.areaOf(one.at()).isPresent(), "noSpotInArea", green, names(wishes));
    }

    private static Choosable locked(GreenCandidates green, Candidate position) {
        List<Message> findings = new ArrayList<>();
        if (!position.usable()) {
            findings.add(finding("lockedNotUsable", green));
        }
        if (position.onSavedGround()) {
            findings.add(finding("lockedOnSaved", green));
        }
        return new Choosable(List.of(position), findings);
    }

    private static Choosable leftOut(String finding, GreenCandidates green) {
        return new Choosable(List.of(), List.of(finding(finding, green)));
    }

    /**
     * What passes; where nothing does, all of it, and that is named: an answer always comes out, and no broken wish in
     * silence.
     */
    private Choosable unlessNoneIsLeft(
            Predicate<Candidate> wish, String finding, GreenCandidates green, Argument... more) {
        List<Candidate> passing = candidates.stream().filter(wish).toList();
        if (!passing.isEmpty()) {
            return new Choosable(passing, findings);
        }
        List<Message> named = new ArrayList<>(findings);
        named.add(finding(finding, green, more));
        return new Choosable(candidates, named);
    }

    private static Name names(Wishes wishes) {
        return new Name(wishes.areas().stream().map(Area::number).collect(Collectors.joining(", ")));
    }

    private static Message finding(String what, GreenCandidates green, Argument... more) {
        List<Argument> arguments = new ArrayList<>(List.of(new Name(green.hole())));
        arguments.addAll(List.of(more));
        return new Message("rotation.finding." + what, arguments);
    }
}
