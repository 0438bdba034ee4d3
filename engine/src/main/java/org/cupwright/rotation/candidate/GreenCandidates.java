package org.cupwright.rotation.candidate;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Third;
import org.cupwright.rotation.candidate.Wishes.Circle;

/**
 * What there is to choose from on one green on one day.
 *
 * @param hole the hole's name
 * @param candidates its candidates; none where nothing may be cut
 * @param yesterday where the hole is now, or was last; empty when nobody knows
 * @param yesterdaysThird in which third the hole is or was, where nobody knows more of its place
 * @param wishes what has been decided beforehand
 */
public record GreenCandidates(
        String hole,
        List<Candidate> candidates,
        Optional<MapPoint> yesterday,
        Optional<Third> yesterdaysThird,
        Wishes wishes) {
    /** A green of whose hole the place is known, or nothing at all. */
    public GreenCandidates(String hole, List<Candidate> candidates, Optional<MapPoint> yesterday, Wishes wishes) {
        this(hole, candidates, yesterday, Optional.empty(), wishes);
    }

    public GreenCandidates {
        candidates = List.copyOf(candidates);
        long placed =
                all(candidates, wishes).filter(one -> one.place().isPresent()).count();
        if (placed != 0 && placed != all(candidates, wishes).count()) {
            throw new IllegalArgumentException("hole " + hole + " has a line of play for some candidates and not for"
                    + " others; give the line of play before candidates are made");
        }
    }

    /** The same green with other wishes. */
    public GreenCandidates withWishes(Wishes others) {
        return new GreenCandidates(hole, candidates, yesterday, yesterdaysThird, others);
    }

    /** Those that may be chosen: the one that is locked, or what is usable and not forbidden. */
    public List<Candidate> open() {
        return wishes.locked()
                .map(List::of)
                .orElseGet(() -> candidates.stream()
                        .filter(Candidate::usable)
                        .filter(one -> wishes.forbidden().stream().noneMatch(circle -> circle.holds(one.at())))
                        .toList());
    }

    /** The same green with only those candidates that lie on some ground. */
    public GreenCandidates keptTo(Circle ground) {
        List<Candidate> there =
                candidates.stream().filter(one -> ground.holds(one.at())).toList();
        return new GreenCandidates(hole, there, yesterday, yesterdaysThird, wishes);
    }

    /** Whether its places have a front, a back, a left and a right. */
    public boolean hasLineOfPlay() {
        return all(candidates, wishes).anyMatch(one -> one.place().isPresent());
    }

    private static Stream<Candidate> all(List<Candidate> candidates, Wishes wishes) {
        return Stream.concat(candidates.stream(), wishes.locked().stream());
    }
}
