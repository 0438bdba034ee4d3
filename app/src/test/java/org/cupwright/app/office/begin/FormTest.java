package org.cupwright.app.office.begin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;

/** What is wrong with a form of the first evening. */
class FormTest {
    private static final Texts TEXTS =
            Texts.find("en", Door.PAGES, UnitSystem.PACES, 0.914).orElseThrow();

    /** Whoever goes from one to the next goes down the form; what it has no field for comes last. */
    @Test
    void whatIsWrongStandsInTheOrderOfTheForm() {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("name", "");
        typed.put("longitude", "twelve");
        typed.put("latitude", "");
        Problem problem = Problem.of("notADay", "day", "someday", new Name("someday"));
        Form form = new Form(
                TEXTS, typed, Map.of("latitude", problem, "longitude", problem, "name", problem, "greens", problem));
        assertThat(form.wrongFields()).containsExactly("name", "longitude", "latitude", "greens");
    }
}
