package org.cupwright.policy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** On invented settings. */
class PolicyTest {
    private static final LocalDate FIRST_OF_MAY = LocalDate.of(2024, 5, 1);

    private final Slice slice = new Slice("wind");
    private Setting<Integer> most;
    private Setting<Double> least;
    private Setting<Boolean> sheltered;

    @BeforeEach
    void declare() {
        most = slice.setting("mostPaces", SettingType.wholeNumber(1, 20), "paces", 5)
                .ours("invented");
        least = slice.setting("leastPaces", SettingType.number(0, 4), "paces", 0.5)
                .published("an invented book");
        sheltered = slice.setting("sheltered", SettingType.yesNo(), "", true).commonPractice("as one does");
    }

    private PolicyChange change(LocalDate effective, String value) {
        return new PolicyChange(effective, most.key(), value);
    }

    @Test
    void aSliceNamesItsSettingsAndWhereTheirDefaultsComeFrom() {
        assertThat(slice.settings()).isEqualTo(List.of(most, least, sheltered));
        assertThat(slice.settings())
                .extracting(Setting::key)
                .isEqualTo(List.of("wind.mostPaces", "wind.leastPaces", "wind.sheltered"));
        assertThat(slice.settings())
                .extracting(Setting::sourceKind)
                .isEqualTo(List.of(SourceKind.OURS, SourceKind.PUBLISHED, SourceKind.COMMON_PRACTICE));
        assertThat(least.source()).isEqualTo("an invented book");
        assertThat(most.sentenceKey()).isEqualTo("setting.wind.mostPaces");
    }

    @Test
    void aSettingWithoutKeySourceOrSoundDefaultIsRefused() {
        SettingType<Integer> type = SettingType.wholeNumber(1, 20);
        assertThatThrownBy(() -> new Slice("Wind").setting("most", type, "", 5).ours("x"))
                .hasMessageContaining("Wind.most");
        assertThatThrownBy(() -> slice.setting("most", type, "", 5).ours(" ")).hasMessageContaining("names no source");
        assertThatThrownBy(() -> slice.setting("most", type, "", 21).ours("x")).hasMessageContaining("21");
    }

    @Test
    void whatTheCourseHasNotSetHasItsDefault() {
        Policy policy = Policy.defaults();
        assertThat(policy.get(most)).isEqualTo(5);
        assertThat(policy.isDefault(most)).isTrue();
        assertThat(policy.set()).isEmpty();
    }

    @Test
    void oneValueMoreLeavesThePolicyBeforeItAsItWas() {
        Policy changed = Policy.defaults().with(most, 20).with(sheltered, false);
        assertThat(changed.get(most)).isEqualTo(20);
        assertThat(changed.get(sheltered)).isFalse();
        assertThat(changed.get(least)).isEqualTo(0.5);
        assertThat(changed.isDefault(most)).isFalse();
        assertThat(changed.isDefault(least)).isTrue();
        assertThat(changed.set()).isEqualTo(Map.of("wind.mostPaces", "20", "wind.sheltered", "no"));
        assertThat(Policy.defaults().get(most)).isEqualTo(5);
    }

    @Test
    void aSmallNumberIsReadAsItWasOnceKept() {
        PolicyChange once = new PolicyChange(FIRST_OF_MAY, least.key(), "5.0E-4");
        assertThat(new PolicyHistory(List.of(once)).at(FIRST_OF_MAY).get(least)).isEqualTo(0.0005);
    }

    @Test
    void aValueThatItsTypeRefusesIsRefusedAtOnce() {
        Policy policy = Policy.defaults();
        assertThatThrownBy(() -> policy.with(most, 21))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("wind.mostPaces holds 21");
    }

    @Test
    void aChangeCountsFromItsDayOnAndOfTwoTheLaterDayThenTheLaterEntry() {
        LocalDate day = FIRST_OF_MAY;
        PolicyHistory history = new PolicyHistory(List.of(
                change(day, "6"),
                change(day.plusDays(10), "8"),
                change(day.plusDays(4), "7"),
                change(day.plusDays(10), "9")));
        assertThat(history.at(day.minusDays(1)).get(most)).isEqualTo(5);
        assertThat(history.at(day).get(most)).isEqualTo(6);
        assertThat(history.at(day.plusDays(3)).get(most)).isEqualTo(6);
        assertThat(history.at(day.plusDays(4)).get(most)).isEqualTo(7);
        assertThat(history.at(day.plusDays(9)).get(most)).isEqualTo(7);
        assertThat(history.at(day.plusDays(10)).get(most)).isEqualTo(9);
        assertThat(history.changes()).hasSize(4);
    }

    @Test
    void theCatalogueFindsASettingAndRefusesTwoOfOneKey() {
        PolicyCatalogue catalogue = new PolicyCatalogue(slice.settings());
        assertThat(catalogue.settings()).isEqualTo(slice.settings());
        assertThat(catalogue.find("wind.sheltered")).isPresent().get().isEqualTo(sheltered);
        assertThat(catalogue.find("wind.shelter")).isEmpty();
        assertThatThrownBy(() -> new PolicyCatalogue(List.of(most, least, most)))
                .hasMessageContaining("wind.mostPaces");
    }

    @Test
    void aKeyThatDoesNotExistIsAnsweredWithThoseMostLikeIt() {
        PolicyCatalogue catalogue = new PolicyCatalogue(slice.settings());
        assertThat(catalogue.namesLike("PACES")).containsExactly("wind.mostPaces", "wind.leastPaces");
        assertThat(catalogue.namesLike("rain.sheltered")).containsExactly("wind.sheltered");
        assertThat(catalogue.namesLike("wind.leafy")).containsExactly("wind.leastPaces"); // begins alike
        assertThat(catalogue.namesLike("wind.mostPacesOfAll")).containsExactly("wind.mostPaces");
        assertThat(catalogue.namesLike("wind.xyz")).isEmpty(); // only the slice is alike
        assertThat(catalogue.namesLike("wind.")).isEmpty();
        assertThat(catalogue.namesLike("windy")).isEmpty();
        assertThat(catalogue.namesLike("xyz")).isEmpty();
    }

    @Test
    void atMostThreeKeysAreNamedTheLongestCommonBeginningFirst() {
        Slice sun = new Slice("sun");
        SettingType<Boolean> type = SettingType.yesNo();
        for (String key : List.of("high", "hills", "hillTop", "hillTops", "hillToes")) {
            sun.setting(key, type, "", true).ours("invented");
        }
        PolicyCatalogue catalogue = new PolicyCatalogue(sun.settings());
        assertThat(catalogue.namesLike("sun.hillTown")).containsExactly("sun.hillTop", "sun.hillTops", "sun.hillToes");
        assertThat(catalogue.namesLike("hi")).containsExactly("sun.high", "sun.hills", "sun.hillTop");
    }
}
