package org.cupwright.rotation;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.message.Message;
import org.cupwright.rotation.candidate.GreenCandidates;

/**
 * Sorts the greens of a day into those that can have a hole and those left out, and names what is out of the ordinary.
 */
final class OpenGreens {
    private final List<OpenGreen> greens = new ArrayList<>();
    private final List<Message> findings = new ArrayList<>();

    OpenGreens(DayRequest request, Aims aims) {
        for (GreenCandidates green : request.greens()) {
            Choosable choosable = Choosable.of(green, aims);
            findings.addAll(choosable.findings());
            if (!choosable.candidates().isEmpty()) {
                greens.add(OpenGreen.of(green, choosable.candidates(), aims, request.seed()));
            }
        }
    }

    List<OpenGreen> greens() {
        return List.copyOf(greens);
    }

    List<Message> findings() {
        return List.copyOf(findings);
    }
}
