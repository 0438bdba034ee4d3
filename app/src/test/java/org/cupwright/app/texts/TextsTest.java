package org.cupwright.app.texts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Length;
import org.cupwright.units.Paces;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;

class TextsTest {
    private static Texts texts(UnitSystem units) {
        return Texts.find("en", Door.COMMANDS, units, Paces.STANDARD_METRES).orElseThrow();
    }

    @Test
    void lengthsAreShownInTheUnitsAskedFor() {
        assertThat(texts(UnitSystem.METRIC).length(3.656)).isEqualTo("3.7 m");
        assertThat(texts(UnitSystem.METRIC).length(0.61)).isEqualTo("0.61 m");
        assertThat(texts(UnitSystem.METRIC).length(0.012)).isEqualTo("12 mm");
        assertThat(texts(UnitSystem.IMPERIAL).length(3.656)).isEqualTo("12.0 ft");
        assertThat(texts(UnitSystem.IMPERIAL).length(0.0254)).isEqualTo("1.00 in");
        assertThat(texts(UnitSystem.PACES).length(3.656)).isEqualTo("4 paces");
        assertThat(texts(UnitSystem.PACES).length(1.4)).isEqualTo("1½ paces");
        assertThat(texts(UnitSystem.PACES).length(0.914)).isEqualTo("1 pace");
    }

    /** Feet by their definition (0.3048 m), paces of 0.914 m. */
    @Test
    void theBarOfAMapIsARoundLengthOfTheReadersUnits() {
        assertThat(texts(UnitSystem.METRIC).roundLength()).isEqualTo(new RoundLength(5, "5 m"));
        assertThat(texts(UnitSystem.IMPERIAL).roundLength().says()).isEqualTo("15 ft");
        assertThat(texts(UnitSystem.IMPERIAL).roundLength().metres()).isCloseTo(4.572, within(1e-9));
        assertThat(texts(UnitSystem.PACES).roundLength().says()).isEqualTo("5 paces");
        assertThat(texts(UnitSystem.PACES).roundLength().metres()).isCloseTo(4.57, within(1e-9));
    }

    @Test
    void aSentenceHoldsItsArgumentsInTheReadersUnits() {
        Message message = Message.of("rule.edge.pass", new Length(4.57), new Length(3.656));
        assertThat(texts(UnitSystem.METRIC).say(message)).isEqualTo("4.6 m from the edge, at least 3.7 m.");
        assertThat(texts(UnitSystem.PACES).say(message)).isEqualTo("5 paces from the edge, at least 4 paces.");
    }

    @Test
    void lengthsThatDifferLookDifferentInOneSentence() {
        Message near = Message.of("rule.oldHole.caution", new Length(4.87), new Length(4.9));
        assertThat(texts(UnitSystem.METRIC).say(near)).contains("4.87 m").contains("4.90 m");
        assertThat(texts(UnitSystem.PACES).say(near)).contains("5.3 paces").contains("5.4 paces");
        assertThat(texts(UnitSystem.IMPERIAL).say(near)).contains("16.0 ft").contains("16.1 ft");
        Message same = Message.of("rule.oldHole.caution", new Length(4.9), new Length(4.9));
        assertThat(texts(UnitSystem.METRIC).say(same)).contains("4.9 m").doesNotContain("4.90");
    }

    @Test
    void numbersChooseTheirSentence() {
        Message one = Message.of("survey.pointsLeftOut", new Message.Count(1));
        Message many = Message.of("survey.pointsLeftOut", new Message.Count(1234));
        assertThat(texts(UnitSystem.METRIC).say(one))
                .startsWith("One point lies")
                .contains("was left out");
        assertThat(texts(UnitSystem.METRIC).say(many))
                .startsWith("1,234 points lie")
                .contains("were left out");
    }

    @Test
    void spanishSpeaksOfLengthsDaysAndPlacesInItsOwnWay() {
        Texts spanish = Texts.find("es", Door.COMMANDS, UnitSystem.PACES, Paces.STANDARD_METRES)
                .orElseThrow();
        assertThat(spanish.say(Message.of("rule.edge.pass", new Length(4.57), new Length(3.656))))
                .isEqualTo("A 5 pasos del borde, al menos 4 pasos.");
        assertThat(spanish.number(9.9, 1)).isEqualTo("9,9");
        assertThat(spanish.day(LocalDate.of(2026, 6, 20))).isEqualTo("sáb 20 jun 2026");
        assertThat(spanish.say("place.left", spanish.say("area.front.left"), "7½", "14½"))
                .isEqualTo("entrada izq. · 7½ dentro · izq. 14½");
        assertThat(spanish.isYes("Sí")).isTrue();
        assertThat(spanish.isYes("si\u0301")).isTrue(); // the accent as a sign of its own
        assertThat(spanish.isYes("y")).isFalse();
        assertThat(texts(UnitSystem.PACES).isYes("sí")).isFalse();
    }

    @Test
    void aKeyWithoutASentenceIsShownAsItIs() {
        assertThat(texts(UnitSystem.METRIC).say(Message.of("no.such.key"))).isEqualTo("no.such.key");
    }

    @Test
    void daysCarryTheirWeekday() {
        assertThat(texts(UnitSystem.METRIC).day(LocalDate.of(2026, 6, 20))).isEqualTo("Sat 20 Jun 2026");
    }

    @Test
    void everyDoorSaysTheSameInItsOwnWords() {
        Message planFirst = Message.of("try.planFirst", new Message.Name("2026-06-20"));
        assertThat(at(Door.COMMANDS).say(planFirst)).isEqualTo("Make one first: cupwright plan --date 2026-06-20.");
        assertThat(at(Door.PAGES).say(planFirst)).isEqualTo("Make one for 2026-06-20 first.");
        assertThat(at(Door.API).say(planFirst)).isEqualTo("Make one for 2026-06-20 first.");
    }

    @Test
    void aFieldIsNamedAsThoseAtTheDoorKnowIt() {
        Message where = Message.of("where.field", new Message.Field("date"));
        assertThat(at(Door.COMMANDS).say(where)).isEqualTo("option --date");
        assertThat(at(Door.PAGES).say(where)).isEqualTo("the day");
        assertThat(at(Door.API).say(where)).isEqualTo("/date");
        assertThat(texts(UnitSystem.METRIC).say(where)).isEqualTo("option --date");
    }

    private static Texts at(Door door) {
        return Texts.find("en", door, UnitSystem.METRIC, Paces.STANDARD_METRES).orElseThrow();
    }
}
