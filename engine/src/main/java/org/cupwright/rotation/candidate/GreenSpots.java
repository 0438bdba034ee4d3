package org.cupwright.rotation.candidate;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.Lateral;
import org.cupwright.green.Third;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.Verdict;
import org.cupwright.rotation.candidate.RoomAbout.Square;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/**
 * All judged spots of one green, thousands of them, and the few hundred well spread candidates the rotation looks at.
 *
 * <p>Thinning keeps, of every square of the course's frame, the best spot of each kind (third, lateral, difficulty): so
 * no kind of position a green offers is lost, and the choice does not depend on the order of the spots. Better is, in
 * this order: off saved ground, the better verdict, not doubtful, measured or said to be good, more room, nearer to the
 * square's centre, farther west, farther south.
 */
public final class GreenSpots {
    private static final Comparator<Candidate> BETTER_FIRST = Comparator.comparing(Candidate::onSavedGround)
            .thenComparing(Candidate::verdict)
            .thenComparing(Candidate::doubtful)
            .thenComparing(candidate -> !candidate.judgement().vouchedFor())
            .thenComparing(Candidate::goodWithinMetres, Comparator.reverseOrder());

    private final List<JudgedSpot> spots;
    private final RoomAbout room;
    private final List<PreparedGeometry> saved;

    public GreenSpots(List<JudgedSpot> spots, GroundOnDay ground) {
        this.spots = List.copyOf(spots);
        this.room = new RoomAbout(this.spots);
        this.saved = ground.counting(GroundItem.Kind.SAVED).stream()
                .map(item -> PreparedGeometryFactory.prepare(item.place()))
                .toList();
    }

    /** A spot of this green as a candidate, whatever its verdict: for a position somebody wants to keep. */
    public Candidate candidate(JudgedSpot spot) {
        return new Candidate(spot.judgement(), spot.place(), room.metres(spot.judgement()), onSavedGround(spot));
    }

    /** The usable candidates, one for each square and kind, from south to north and west to east. */
    public List<Candidate> thinned(double squareMetres) {
        Map<Kind, Candidate> best = new LinkedHashMap<>();
        Comparator<Candidate> better = BETTER_FIRST
                .thenComparing(candidate -> offCentre(candidate.at(), squareMetres))
                .thenComparing(candidate -> candidate.at().east())
                .thenComparing(candidate -> candidate.at().north());
        for (JudgedSpot spot : spots) {
            Verdict verdict = spot.judgement().verdict();
            if (verdict == Verdict.PASS || verdict == Verdict.CAUTION) {
                Candidate candidate = candidate(spot);
                best.merge(Kind.of(candidate, squareMetres), candidate, (a, b) -> better.compare(a, b) <= 0 ? a : b);
            }
        }
        return southToNorth(best.values());
    }

    private static List<Candidate> southToNorth(Collection<Candidate> candidates) {
        return candidates.stream()
                .sorted(Comparator.comparing(
                                (Candidate candidate) -> candidate.at().north())
                        .thenComparing(candidate -> candidate.at().east()))
                .toList();
    }

    private static double offCentre(MapPoint at, double squareMetres) {
        return Square.of(at, squareMetres).centre(squareMetres).distanceMetres(at);
    }

    private boolean onSavedGround(JudgedSpot spot) {
        return !saved.isEmpty()
                && saved.stream()
                        .anyMatch(
                                area -> area.covers(spot.judgement().position().toPoint()));
    }

    private record Kind(
            Square square, Optional<Third> third, Optional<Lateral> lateral, Optional<DifficultyClass> rank) {
        static Kind of(Candidate candidate, double squareMetres) {
            return new Kind(
                    Square.of(candidate.at(), squareMetres), candidate.third(), candidate.lateral(), candidate.rank());
        }
    }
}
