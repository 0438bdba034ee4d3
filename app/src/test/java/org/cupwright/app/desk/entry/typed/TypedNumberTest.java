package org.cupwright.app.desk.entry.typed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import org.cupwright.message.Problem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked by hand: an inch is 25.4 mm, a mile 1,609.344 m, a foot 0.3048 m, a sea mile 1,852 m; 68 °F is 20 °C. */
class TypedNumberTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "highestCelsius | 68°F | 20",
                "highestCelsius | 68 f | 20",
                "lowestCelsius | -4F | -20",
                "highestCelsius | 18,5 °C | 18.5",
                "highestCelsius | 18.5 | 18.5",
                "holeDepthMillimetres | 8 in | 203.2",
                "cupDepthMillimetres | 1\" | 25.4",
                "plugHeightMillimetres | 1/8in | 3.175",
                "plugHeightMillimetres | 3/16 inch | 4.7625",
                "holeDepthMillimetres | 7 1/2in | 190.5",
                "holeDepthMillimetres | 7-1/2 inches | 190.5",
                "holeDepthMillimetres | 20.3cm | 203",
                "rainMillimetres | 0,4in | 10.16",
                "plugHeightMillimetres | -2mm | -2",
                "windMetresPerSecond | 36 km/h | 10",
                "windMetresPerSecond | 10 mph | 4.4704",
                "windMetresPerSecond | 18 kn | 9.26",
                "feet | 10.5ft | 10.5",
                "otherWayFeet | 3.048 m | 10",
                "highestHumidityPercent | 80% | 80",
                "atEastMetres | 12.25 | 12.25"
            })
    void isKeptInTheUnitOfItsPart(String part, String typed, double kept) {
        assertThat(PartText.number(part, typed, false)).isCloseTo(kept, offset(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plugHeightMillimetres | 1/8 | try.log.fraction",
                "plugHeightMillimetres | 1/8 mm | try.log.fraction",
                "highestCelsius | 20 K | try.log.unit",
                "highestCelsius | 20 in | try.log.unit",
                "holeDepthMillimetres | 1.5 1/2in | try.log.number",
                "holeDepthMillimetres | -1 1/2in | try.log.number",
                "holeDepthMillimetres | 1/0in | try.log.number",
                "holeDepthMillimetres | in | try.log.number",
                "holeDepthMillimetres | 1e1 | try.log.unit",
                "holeDepthMillimetres | NaN | try.log.number",
                "atEastMetres | 12 m | try.log.number",
                "holeDepthMillimetres | 1,000.5 | try.log.number",
                "holeDepthMillimetres | ٣ | try.log.number"
            })
    void anythingElseIsRefusedWithWhatToType(String part, String typed, String advice) {
        assertThatThrownBy(() -> PartText.number(part, typed, false))
                .isInstanceOfSatisfying(
                        Problem.class,
                        problem -> assertThat(problem.tryThis().key()).isEqualTo(advice));
    }
}
