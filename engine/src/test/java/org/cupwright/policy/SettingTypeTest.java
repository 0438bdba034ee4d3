package org.cupwright.policy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.cupwright.message.Message;
import org.junit.jupiter.api.Test;

class SettingTypeTest {
    private enum Wind {
        CALM,
        FRESH_BREEZE,
        STRONG_GALE_6
    }

    @Test
    void aNumberLiesBetweenItsBoundsBothIncluded() {
        SettingType<Double> type = SettingType.number(0.5, 20);
        assertThat(type.read("0.5")).contains(0.5);
        assertThat(type.read(" 20 ")).contains(20.0);
        assertThat(type.read("0.49")).isEmpty();
        assertThat(type.read("20.01")).isEmpty();
        assertThat(type.read("NaN")).isEmpty();
        assertThat(type.read("many")).isEmpty();
        for (String none : List.of("1e1", "1E1", "0x1p3", "1d", "1f", "Infinity", "", "½½", "1½5")) {
            assertThat(type.read(none)).as(none).isEmpty();
        }
        for (String none : List.of("-0", "-0.0", "−0", "٥", "５", "५", "٥٫٥")) {
            assertThat(SettingType.number(-5, 20).read(none)).as(none).isEmpty();
            assertThat(SettingType.wholeNumber(-5, 20).read(none)).as(none).isEmpty();
        }
        assertThat(SettingType.number(0, 20).read("0")).contains(0.0);
        assertThat(type.read("4,5")).contains(4.5);
        assertThat(type.read("4½")).contains(4.5);
        assertThat(type.accepts())
                .isEqualTo(Message.of("accepts.number", new Message.PlainNumber(0.5), new Message.PlainNumber(20)));
    }

    @Test
    void aNumberIsWrittenWithoutDecimalsThatSayNothing() {
        SettingType<Double> type = SettingType.number(-1e12, 1e12);
        assertThat(type.write(5.0)).isEqualTo("5");
        assertThat(type.write(-2.5)).isEqualTo("-2.5");
        assertThat(type.write(999_999_999.0)).isEqualTo("999999999");
        assertThat(type.write(1e9)).isEqualTo("1000000000");
        assertThat(type.write(-1e9)).isEqualTo("-1000000000");
        assertThat(type.write(0.0005)).isEqualTo("0.0005");
        for (double value : new double[] {0, 5, -2.5, 999_999_999, 1e9, -1e9, 0.0005, 100, 1e-9}) {
            assertThat(type.read(type.write(value))).contains(value);
        }
    }

    @Test
    void aWholeNumberLiesBetweenItsBoundsBothIncluded() {
        SettingType<Integer> type = SettingType.wholeNumber(-2, 7);
        assertThat(type.read("-2")).contains(-2);
        assertThat(type.read("7")).contains(7);
        assertThat(type.read("+7")).contains(7);
        assertThat(type.read(" 007 ")).contains(7);
        assertThat(type.read("0")).contains(0);
        assertThat(type.read("-02")).contains(-2);
        assertThat(type.read("99999999999")).isEmpty();
        assertThat(type.read("-3")).isEmpty();
        assertThat(type.read("8")).isEmpty();
        assertThat(type.read("2.5")).isEmpty();
        assertThat(type.write(7)).isEqualTo("7");
        assertThat(type.accepts())
                .isEqualTo(Message.of("accepts.wholeNumber", new Message.PlainNumber(-2), new Message.PlainNumber(7)));
    }

    @Test
    void yesAndNoAreReadInTwoWaysAndWrittenInOne() {
        SettingType<Boolean> type = SettingType.yesNo();
        assertThat(type.read("yes")).contains(true);
        assertThat(type.read(" true ")).contains(true);
        assertThat(type.read("no")).contains(false);
        assertThat(type.read("false")).contains(false);
        assertThat(type.read("perhaps")).isEmpty();
        assertThat(type.write(true)).isEqualTo("yes");
        assertThat(type.write(false)).isEqualTo("no");
        assertThat(type.accepts()).isEqualTo(Message.of("accepts.yesNo"));
    }

    @Test
    void oneOfTheChoicesIsWrittenInLowerCamelCase() {
        SettingType<Wind> type = SettingType.oneOf(Wind.class);
        assertThat(type.read(" freshBreeze ")).contains(Wind.FRESH_BREEZE);
        assertThat(type.read("FRESH_BREEZE")).isEmpty();
        assertThat(type.write(Wind.STRONG_GALE_6)).isEqualTo("strongGale6");
        assertThat(type.accepts())
                .isEqualTo(Message.of("accepts.oneOf", new Message.Name("calm, freshBreeze, strongGale6")));
    }

    @Test
    void aRankingNamesEachAtMostOnceInItsOrder() {
        SettingType<List<Wind>> type = SettingType.ranking(Wind.class);
        assertThat(type.read(" strongGale6   calm ")).contains(List.of(Wind.STRONG_GALE_6, Wind.CALM));
        assertThat(type.read("  ")).contains(List.of());
        assertThat(type.read("calm calm")).isEmpty();
        assertThat(type.read("calm storm")).isEmpty();
        assertThat(type.write(List.of(Wind.FRESH_BREEZE, Wind.CALM))).isEqualTo("freshBreeze calm");
        assertThat(type.accepts())
                .isEqualTo(Message.of("accepts.ranking", new Message.Name("calm, freshBreeze, strongGale6")));
    }

    @Test
    void aTextIsOneLineAndNotTooLong() {
        SettingType<String> type = SettingType.text(4);
        assertThat(type.read("oak ")).contains("oak");
        assertThat(type.read("oaks!")).isEmpty();
        assertThat(type.read("a\nb")).isEmpty();
        assertThat(type.write("oak")).isEqualTo("oak");
        assertThat(type.accepts()).isEqualTo(Message.of("accepts.text", new Message.Count(4)));
    }
}
