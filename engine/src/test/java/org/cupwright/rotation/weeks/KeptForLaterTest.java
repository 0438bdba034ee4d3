package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.Verdict;
import org.cupwright.message.Message;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.RotationPolicy;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.junit.jupiter.api.Test;

/** Why a better spot was left on the first day: one of five metres apart, of which the first is roomy. */
class KeptForLaterTest {
    private static final int BETTER = 0;
    private static final int ELSEWHERE = 1;
    private static final int CHOSEN = 2;

    /** Room alone is priced, five points a metre that is wanting to 1.83 m. */
    private static final Policy POLICY = Policy.defaults()
            .with(RotationPolicy.WEIGHT_NEAR_YESTERDAY, 0.0)
            .with(RotationPolicy.WEIGHT_CLOSE_TO_YESTERDAY, 0.0);

    private static Candidate spot(double east, boolean placed, double room) {
        return MadeGreens.candidate(east, 15, Verdict.PASS, Optional.of(DifficultyClass.MEDIUM), placed, room);
    }

    /** Changed every day but the last of four. */
    private static List<GreenDay> days() {
        List<GreenDay> days = new ArrayList<>();
        for (int day = 0; day < 4; day++) {
            LocalDate date = MadeWeeks.FIRST.plusDays(day);
            days.add(new GreenDay(GroundOnDay.clear(date), Wishes.none(), day < 3));
        }
        return days;
    }

    /** @param later where the holes of the second and of the third day are */
    private static Optional<Message> reason(int rest, boolean placed, double roomOfChosen, int... later) {
        List<Candidate> spots =
                List.of(spot(5, placed, 3), spot(15, placed, roomOfChosen - 0.01), spot(25, placed, roomOfChosen));
        GreenWeeks green = new GreenWeeks("1", spots, List.of(), Optional.empty(), days());
        return reason(rest, green, later);
    }

    private static Optional<Message> reason(int rest, GreenWeeks green, int... later) {
        WeeksModel model = new WeeksModel(MadeWeeks.request(4, MadeWeeks.rests(rest, 0), green), POLICY);
        Choices choices = new Choices(model);
        choices.put(0, 0, model.table(0).numberOf(green.candidates().get(CHOSEN).at()));
        for (int i = 0; i < later.length; i++) {
            choices.put(0, i + 1, later[i]);
        }
        return new KeptForLater(model, choices).reason(0, 0);
    }

    private static Message.Day day(int number) {
        return new Message.Day(MadeWeeks.FIRST.plusDays(number));
    }

    @Test
    void aBetterSpotThatALaterDayHasIsNamed_withItsPlaceWhereItIsKnown() {
        assertThat(reason(10, true, 0.5, ELSEWHERE, BETTER))
                .contains(Message.of(
                        "rotation.reason.keptForAt",
                        new Message.Translated("third.middle"),
                        new Message.Translated("lateral.left"),
                        day(2)));
        assertThat(reason(10, false, 0.5, ELSEWHERE, BETTER)).contains(Message.of("rotation.reason.keptFor", day(2)));
    }

    @Test
    void ofSeveralDaysThatNeedItTheFirstIsNamed() {
        assertThat(reason(10, false, 0.5, BETTER, BETTER)).contains(Message.of("rotation.reason.keptFor", day(1)));
    }

    /** A metre of room is the least that counts. */
    @Test
    void aSpotThatIsHardlyBetterIsNoReason() {
        assertThat(reason(10, false, 0.82, BETTER, ELSEWHERE)).isPresent();
        assertThat(reason(10, false, 0.83, BETTER, ELSEWHERE)).isEmpty();
        assertThat(reason(10, false, 3, BETTER, ELSEWHERE)).isEmpty();
    }

    /** A hole that stays needs its ground on the day it is cut, and not on the days after. */
    @Test
    void whatNoLaterDayNeedsWhileItsGroundRestsIsNoReason() {
        assertThat(reason(10, false, 0.5, ELSEWHERE, CHOSEN)).isEmpty();
        assertThat(reason(2, false, 0.5, ELSEWHERE, BETTER)).isPresent();
        assertThat(reason(1, false, 0.5, ELSEWHERE, BETTER)).isEmpty();
    }

    @Test
    void aHoleThatSomebodyFixedNeedsNoReason() {
        List<Candidate> spots = List.of(spot(5, false, 3), spot(15, false, 0.5), spot(25, false, 0.5));
        GreenWeeks green = new GreenWeeks("1", spots, List.of(), Optional.empty(), days());
        assertThat(reason(10, green, BETTER, ELSEWHERE)).isPresent();
        Wishes fixed = new Wishes(Optional.of(spots.get(CHOSEN)), List.of(), false);
        GreenWeeks locked = MadeWeeks.with(green, 0, new GreenDay(GroundOnDay.clear(MadeWeeks.FIRST), fixed));
        assertThat(reason(10, locked, BETTER, ELSEWHERE)).isEmpty();
    }
}
