package org.cupwright.rotation.candidate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.RuleId;

/**
 * The spots of a green that may have a hole if some rule is set aside, thinned out as others are: for each set of rules
 * by itself, so that none that breaks few is lost to one that breaks many. About them there is no room: what is next to
 * them may be worse still.
 */
public final class EasedCandidates {
    private EasedCandidates() {}

    /**
     * @param spots judged with those rules set aside
     * @param squareMetres one of each kind is kept of every square of the course's frame
     */
    public static List<Candidate> of(List<JudgedSpot> spots, GroundOnDay ground, double squareMetres) {
        Map<Set<RuleId>, List<JudgedSpot>> byRules = spots.stream()
                .collect(Collectors.groupingBy(
                        spot -> spot.judgement().setAside(), LinkedHashMap::new, Collectors.toList()));
        return byRules.values().stream()
                .flatMap(alike -> new GreenSpots(alike, ground).thinned(squareMetres).stream())
                .map(spot -> new Candidate(spot.judgement(), spot.place(), 0, spot.onSavedGround()))
                .toList();
    }
}
