package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.RuleId;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.PlannedHole;
import org.cupwright.rotation.candidate.Candidate;
import org.junit.jupiter.api.Test;

/** What a hole of a plan could have been instead. */
class ExplainedDaysTest {
    private static final Candidate CHOSEN = MadeGreens.good(15, 5, DifficultyClass.MEDIUM);
    private static final Candidate OTHER = MadeGreens.good(15, 15, DifficultyClass.MEDIUM);
    private static final Candidate EASED =
            MadeGreens.eased(MadeGreens.good(15, 25, DifficultyClass.MEDIUM), Set.of(RuleId.HOLLOW));

    private static PlannedHole hole(boolean anew, Candidate... strict) {
        GreenWeeks green =
                new GreenWeeks("1", List.of(strict), List.of(EASED), List.of(), Optional.empty(), MadeWeeks.clear(1));
        WeeksRequest request = MadeWeeks.request(1, MadeWeeks.rests(5, 1), green);
        WeeksModel model = new WeeksModel(request, Policy.defaults());
        Choices choices = new Choices(model);
        choices.put(0, 0, 0);
        return new ExplainedDays(request, model, choices, Policy.defaults())
                .of(0, one -> anew)
                .holes()
                .get(0);
    }

    @Test
    void anotherSpotIsTheAlternative_butNoneWhereARuleWouldBeSetAside() {
        PlannedHole hole = hole(true, CHOSEN, OTHER);
        assertThat(hole.candidate().at()).isEqualTo(CHOSEN.at());
        assertThat(hole.alternative().orElseThrow().candidate().at()).isEqualTo(OTHER.at());
        assertThat(hole(true, CHOSEN).alternative()).isEmpty();
    }

    @Test
    void aHoleThatCouldNotHaveBeenChosenOtherwiseHasNoAlternative() {
        assertThat(hole(false, CHOSEN, OTHER).alternative()).isEmpty();
    }
}
