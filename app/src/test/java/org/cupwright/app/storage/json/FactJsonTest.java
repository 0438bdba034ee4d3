package org.cupwright.app.storage.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Correction;
import org.cupwright.cupchange.CrewNote.Severity;
import org.cupwright.cupchange.CrewNote.SomethingOdd;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.MadeFacts;
import org.cupwright.cupchange.Payload;
import org.cupwright.cupchange.PayloadKinds;
import org.cupwright.message.Message;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class FactJsonTest {
    private static final UUID ID = UUID.fromString("00000000-0000-4000-8000-000000000007");
    private static final Instant WHEN = Instant.parse("2026-06-20T04:40:00Z");

    @Test
    void aFactIsWrittenByTheNamesOfItsParts() {
        Fact fact = MadeFacts.fact(ID, WHEN, Optional.of("7"), CupChanged.asPlanned(new MapPoint(12.5, 30)));
        JsonNode json = JsonMapper.shared().readTree(FactJson.write(fact));
        JsonNode expected = JsonMapper.shared().readTree("""
                        {"id":"00000000-0000-4000-8000-000000000007","version":1,"happenedAt":"2026-06-20T04:40:00Z",
                         "recordedAtDevice":"2026-06-20T04:41:00Z","person":"invented person",
                         "course":"made-up","hole":"7",
                         "payload":{"kind":"cupChanged","planned":{"east":12.5,"north":30.0},
                         "cutAt":{"east":12.5,"north":30.0},
                         "foundBy":"paces","way":"onePiece","soil":"none","rimWhited":false,"edgeRagged":false}}
                        """);
        assertThat(json).isEqualTo(expected);
    }

    @Test
    void somethingOddFromBeforePhotosWereKeptIsRead() {
        Payload odd = FactJson.readPayload("{\"kind\":\"somethingOdd\",\"severity\":\"soon\",\"text\":\"ring\"}");
        assertThat(odd).isEqualTo(new SomethingOdd(Severity.SOON, "ring", Optional.empty()));
    }

    @Test
    void everyKindOfFactIsReadBackAsItWasWritten() {
        Random random = new Random(Suite.seed());
        Set<String> kinds = new HashSet<>();
        List<Fact> facts = MadeFacts.sequence(random, Suite.count("facts written and read", 10_000, 2_000));
        for (Fact fact : facts) {
            kinds.add(fact.payload().kind());
            assertThat(FactJson.read(FactJson.write(fact)))
                    .as("seed %d", Suite.seed())
                    .isEqualTo(fact);
            assertThat(FactJson.readPayload(FactJson.writePayload(fact.payload())))
                    .isEqualTo(fact.payload());
        }
        Set<String> all = new HashSet<>(PayloadKinds.all().keySet());
        all.remove("correction");
        assertThat(kinds).isEqualTo(all);
    }

    @Test
    void correctionsAreReadBackAsTheyWereWritten() {
        for (Correction correction :
                List.of(Correction.withdrawing(ID), Correction.to(ID, CupChanged.asPlanned(new MapPoint(1, 2))))) {
            assertThat(FactJson.readPayload(FactJson.writePayload(correction))).isEqualTo(correction);
        }
    }

    @Test
    void whatIsNotAFactIsRefusedWithThePlace() {
        assertThatThrownBy(
                        () -> FactJson.readPayload("{\"kind\":\"cupChanged\",\"cutAt\":{\"east\":\"x\",\"north\":1}}"))
                .isInstanceOfSatisfying(
                        UnreadableFact.class,
                        refused -> assertThat(refused.where()).isEqualTo("cutAt.east"));
        assertThatThrownBy(() -> FactJson.readPayload("{\"kind\":\"irrigated\",\"millimetres\":-3}"))
                .isInstanceOf(UnreadableFact.class)
                .hasMessageContaining("irrigation");
        assertThatThrownBy(() -> FactJson.readPayload("{\"kind\":\"irrigated\",\"millimetres\":1,\"inches\":1}"))
                .isInstanceOf(UnreadableFact.class)
                .hasMessageContaining("inches");
        assertThatThrownBy(() -> FactJson.readPayload("{\"kind\":\"irrigated\"}"))
                .as("a number that was left out is not zero")
                .isInstanceOf(UnreadableFact.class);
        assertThatThrownBy(() -> FactJson.readPayload("{\"kind\":\"plugSeen\",\"look\":\"high\"}"))
                .as("a place that was left out")
                .isInstanceOf(UnreadableFact.class);
        assertThatThrownBy(() -> FactJson.read("{")).isInstanceOf(UnreadableFact.class);
    }

    @Test
    void nothingIsNoFact() {
        UnreadableFact refused = catchThrowableOfType(UnreadableFact.class, () -> FactJson.read("null"));
        assertThat(refused.why()).isEqualTo(new Message.Said(Message.of("impossible.nothing")));
        assertThat(refused.where()).isEmpty();
    }

    /** The reader of JSON repeats what it was given, however long. */
    @Test
    void whatIsNoFactIsNotToldInFull() {
        String text = "\"" + "7".repeat(5000) + "\"";
        UnreadableFact refused = catchThrowableOfType(UnreadableFact.class, () -> FactJson.read(text));
        assertThat(refused.why()).isInstanceOf(Message.Name.class);
        assertThat(((Message.Name) refused.why()).text())
                .hasSizeLessThanOrEqualTo(201)
                .endsWith("…");
    }
}
