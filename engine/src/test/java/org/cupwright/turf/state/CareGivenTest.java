package org.cupwright.turf.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import org.cupwright.cupchange.CareWork.Irrigated;
import org.cupwright.cupchange.CareWork.Maintained;
import org.cupwright.cupchange.CareWork.Sprayed;
import org.cupwright.cupchange.CareWork.Upkeep;
import org.junit.jupiter.api.Test;

class CareGivenTest {
    private static final LocalDate NEW_YEAR = LocalDate.of(2024, 1, 1);

    /** 1 January and 67 days are 8 March in a leap year: 31 + 29 + 7. */
    @Test
    void irrigationIsKeptForSixtySevenDays() {
        CareGiven given = CareGiven.NONE.after(new Irrigated(4), NEW_YEAR);
        CareGiven onItsLastDay = given.after(new Irrigated(1), LocalDate.of(2024, 3, 8));
        assertThat(onItsLastDay.irrigationOn(NEW_YEAR)).hasValue(4);
        assertThat(given.after(new Irrigated(1), LocalDate.of(2024, 3, 9)).irrigationOn(NEW_YEAR))
                .isEmpty();
    }

    @Test
    void irrigationOfOneDayAddsUpAndOfNoDayIsUnknown() {
        CareGiven given = CareGiven.NONE
                .after(new Irrigated(4), NEW_YEAR)
                .after(new Irrigated(1.5), NEW_YEAR)
                .after(new Irrigated(0), NEW_YEAR.plusDays(1));
        assertThat(given.irrigation()).hasSize(2);
        assertThat(given.irrigationOn(NEW_YEAR)).hasValue(5.5);
        assertThat(given.irrigationOn(NEW_YEAR.plusDays(1))).hasValue(0);
        assertThat(given.irrigationOn(NEW_YEAR.minusDays(1))).isEmpty();
    }

    @Test
    void anEarlierLabelDoesNotShortenWhatALaterOneAsksFor() {
        Instant six = Instant.parse("2024-01-01T18:00:00Z");
        CareGiven given = CareGiven.NONE.after(new Sprayed("invented", six), NEW_YEAR);
        assertThat(given.after(new Sprayed("invented", six.minusSeconds(1)), NEW_YEAR)
                        .reentryFrom())
                .contains(six);
        assertThat(given.after(new Sprayed("invented", six.plusSeconds(1)), NEW_YEAR)
                        .reentryFrom())
                .contains(six.plusSeconds(1));
    }

    @Test
    void eachKindOfUpkeepHasItsOwnLastDay() {
        CareGiven given = CareGiven.NONE
                .after(new Maintained(Upkeep.FED), NEW_YEAR)
                .after(new Maintained(Upkeep.ROLLED), NEW_YEAR.plusDays(1))
                .after(new Maintained(Upkeep.ROLLED), NEW_YEAR.plusDays(2));
        assertThat(given.lastDone())
                .containsEntry(Upkeep.FED, NEW_YEAR)
                .containsEntry(Upkeep.ROLLED, NEW_YEAR.plusDays(2))
                .hasSize(2);
    }
}
