package org.cupwright.app.answers.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.message.Message;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;

class ShapesTest {
    private final Texts texts =
            Texts.find("en", Door.COMMANDS, UnitSystem.METRIC, 0.9).orElseThrow();

    private String written(Object value) {
        return new Shapes(texts).tree(value).toString();
    }

    @Test
    void numbersAreToFourDecimalsAndWhatIsNotOneIsNull() {
        List<Double> numbers = List.of(0.12346, 2.5, 100.0, -0.00001, Double.NaN, Double.POSITIVE_INFINITY);

        assertThat(written(numbers)).isEqualTo("[0.1235,2.5,100,0,null,null]");
        assertThat(written(OptionalDouble.of(1.00004))).isEqualTo("1");
        assertThat(written(OptionalDouble.empty())).isEqualTo("null");
    }

    @Test
    void aShapeKeepsItsOrderAndSaysWhatIsNotKnown() {
        Shape shape = new Shape()
                .with("outcome", Outcome.NOT_CHECKED)
                .with("day", LocalDate.of(2026, 5, 31))
                .with("at", Instant.parse("2026-05-31T05:20:00Z"))
                .with("nobody", Optional.empty())
                .with("nothing", null)
                .with(new Shape().with("counts", Map.of("a", 1)));

        assertThat(written(shape))
                .isEqualTo("{\"outcome\":\"notChecked\",\"day\":\"2026-05-31\",\"at\":\"2026-05-31T05:20:00Z\","
                        + "\"nobody\":null,\"nothing\":null,\"counts\":{\"a\":1}}");
    }

    @Test
    void messagesAreSentences() {
        Message nothing = Message.of("level.none");

        assertThat(written(List.of(nothing))).isEqualTo("[\"" + texts.say("level.none") + "\"]");
    }

    @Test
    void whatDoesNotLeanHasNoSuchPart() {
        assertThat(written(rule(Outcome.CAUTION, Optional.of(Outcome.PASS)))).contains("\"leans\":\"pass\"");
        assertThat(written(rule(Outcome.PASS, Optional.empty())))
                .isEqualTo("{\"rule\":\"" + RuleId.values()[0].id() + "\",\"value\":1.5,\"unit\":\"m\",\"limit\":null,"
                        + "\"margin\":null,\"standardError\":null,\"outcome\":\"pass\",\"says\":\""
                        + texts.say("level.none") + "\"}");
    }

    private static RuleResult rule(Outcome outcome, Optional<Outcome> leans) {
        OptionalDouble unknown = OptionalDouble.empty();
        return new RuleResult(
                RuleId.values()[0],
                OptionalDouble.of(1.5),
                "m",
                unknown,
                unknown,
                unknown,
                outcome,
                leans,
                Message.of("level.none"));
    }
}
