package org.cupwright.rotation.candidate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.Lateral;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Verdict;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.candidate.Wishes.Circle;
import org.junit.jupiter.api.Test;

/** Invented spots in the middle of a green of thirty metres. */
class GreenCandidatesTest {
    private static final GroundOnDay CLEAR = GroundOnDay.clear(LocalDate.of(2026, 5, 4));

    private static Judgement judged(double east, double north, Verdict verdict) {
        return MadeGreens.judgement(east, north, verdict, Optional.of(DifficultyClass.MEDIUM), 5);
    }

    private static JudgedSpot spot(Judgement judgement) {
        MapPoint at = judgement.position();
        return new JudgedSpot(judgement, Optional.of(MadeGreens.place(at.east(), at.north())));
    }

    private static JudgedSpot spot(double east, double north) {
        return spot(judged(east, north, Verdict.PASS));
    }

    private static Candidate candidate(double east, double north, Verdict verdict) {
        return new Candidate(judged(east, north, verdict), Optional.of(MadeGreens.place(east, north)), 3, false);
    }

    private static void keeps(JudgedSpot better, JudgedSpot other) {
        for (List<JudgedSpot> spots : List.of(List.of(better, other), List.of(other, better))) {
            assertThat(new GreenSpots(spots, CLEAR).thinned(1))
                    .extracting(Candidate::at)
                    .containsExactly(better.judgement().position());
        }
    }

    @Test
    void ofASquareTheSpotNearerToItsCentreIsKeptThenTheOneFartherWestThenSouth() {
        keeps(spot(12.5, 12.625), spot(12.125, 12.125));
        keeps(spot(12.5, 12.625), spot(12.875, 12.875));
        keeps(spot(12.25, 12.5), spot(12.75, 12.5));
        keeps(spot(12.5, 12.25), spot(12.5, 12.75));
    }

    @Test
    void aSpotThatAPersonSpeaksForIsKeptBeforeOneNearerToTheCentre() {
        Candidate said = MadeGreens.said(candidate(12.125, 12.125, Verdict.PASS), speaksForAHole());
        keeps(spot(said.judgement()), spot(12.5, 12.5));
    }

    private static PersonsOpinion.Kind speaksForAHole() {
        return List.of(PersonsOpinion.Kind.values()).stream()
                .filter(PersonsOpinion.Kind::speaksForAHole)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void candidatesStandFromSouthToNorthAndFromWestToEast() {
        List<JudgedSpot> spots = List.of(spot(15.5, 16.5), spot(16.5, 15.5), spot(14.5, 15.5));
        assertThat(new GreenSpots(spots, CLEAR).thinned(1))
                .extracting(Candidate::at)
                .containsExactly(new MapPoint(14.5, 15.5), new MapPoint(16.5, 15.5), new MapPoint(15.5, 16.5));
    }

    @Test
    void openIsWhatIsUsableAndNotForbiddenOrTheLockedOne() {
        Candidate open = candidate(15, 15, Verdict.CAUTION);
        Candidate refused = candidate(16, 15, Verdict.FAIL);
        Candidate forbidden = candidate(17, 15, Verdict.PASS);
        List<Candidate> all = List.of(open, refused, forbidden);
        Wishes wishes = new Wishes(Optional.empty(), List.of(new Circle(new MapPoint(17.5, 15), 0.5)), false);
        assertThat(new GreenCandidates("7", all, Optional.empty(), wishes).open())
                .containsExactly(open);
        assertThat(new GreenCandidates("7", all, Optional.empty(), Wishes.none()).open())
                .containsExactly(open, forbidden);
        Wishes locked = new Wishes(Optional.of(refused), List.of(), false);
        assertThat(new GreenCandidates("7", all, Optional.empty(), locked).open())
                .containsExactly(refused);
    }

    @Test
    void aLineOfPlayIsThereForAllCandidatesOrNone() {
        Candidate placed = candidate(15, 15, Verdict.PASS);
        Candidate nowhere = new Candidate(judged(16, 15, Verdict.PASS), Optional.empty(), 3, false);
        assertThat(placed.lateral()).contains(Lateral.values()[1]);
        assertThat(new GreenCandidates("7", List.of(placed), Optional.empty(), Wishes.none()).hasLineOfPlay())
                .isTrue();
        assertThat(new GreenCandidates("7", List.of(nowhere), Optional.empty(), Wishes.none()).hasLineOfPlay())
                .isFalse();
        assertThatThrownBy(() -> new GreenCandidates("7", List.of(placed, nowhere), Optional.empty(), Wishes.none()))
                .hasMessageContaining("hole 7 has a line of play for some");
    }

    @Test
    void aCircleHoldsItsRimAndMayBeAPoint() {
        Circle circle = new Circle(new MapPoint(10, 10), 5);
        assertThat(circle.holds(new MapPoint(13, 14))).isTrue();
        assertThat(circle.holds(new MapPoint(13, 14.01))).isFalse();
        assertThat(new Circle(new MapPoint(10, 10), 0).holds(new MapPoint(10, 10)))
                .isTrue();
        assertThatThrownBy(() -> new Circle(new MapPoint(10, 10), -0.1)).hasMessageContaining("-0.1 m");
    }
}
