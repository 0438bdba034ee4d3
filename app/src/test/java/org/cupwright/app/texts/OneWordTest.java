package org.cupwright.app.texts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One word for one thing: other words for what docs/words.md has a word for stand in no sentence. */
class OneWordTest {
    /**
     * Words that must not stand, the word that stands for the thing, and where another thing is meant by it all the
     * same.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "es ; frente ; entrada ;",
                "es ; delanter[oa]s? ; entrada ;",
                "es ; traser[oa]s? ; fondo ;",
                "es ; atr[aá]s ; fondo ; días atrás",
                "es ; (por|de|m[aá]s|tienen) (delante|adelante) ; entrada, dentro ;",
                "es ; plane(a|e|o|ar|an|en|ado|ada|ados|adas|amos) ; planificar ;",
                "es ; esquinas? ; vértice ; esquina de la casa club",
                "es ; greens? de pr[aá]ctica ; green de prácticas ;",
                "es ; im[aá]gen(es)?|imagen ; foto, plano ;",
                "es ; hacer un c[oó]digo ; generar ;",
                "es ; hacer el campo ; crear ;",
                "es ; (cosas? )?rar[oa]s? ; incidencia ;",
                "es ; costumbres? ; ajustes ;",
                "es ; tees? de pr[aá]ctica|putting green ; green de prácticas ;",
                "es ; aguj(ero|eros) ; hoyo ;",
                "es ; banderín|pin ; bandera ; PIN",
                "es ; libro de registro|bit[aá]cora ; cuaderno ;",
                "es ; configuraci[oó]n ; ajustes ;",
                "en ; pins? ; hole location, flag ; PIN",
                "en ; cup locations?|pin positions? ; hole location ;",
                "en ; diary ; logbook ;",
                "en ; no hole''s ; practice green ;"
            })
    void anotherWordForItStandsNowhere(String language, String other, String word, String meantOtherwise) {
        Pattern stands = Pattern.compile(
                "(?iu)(?<![-\\p{L}/.=])(?:" + other + ")(?![-\\p{L}=])", Pattern.UNICODE_CHARACTER_CLASS);
        Set<String> found = new TreeSet<>();
        for (String part : LanguageFiles.parts()) {
            for (Map.Entry<String, String> line :
                    LanguageFiles.lines(language, part).entrySet()) {
                String said = meantOtherwise == null
                        ? line.getValue()
                        : line.getValue().replace(meantOtherwise, "");
                if (stands.matcher(said).find()) {
                    found.add(line.getKey() + " = " + line.getValue());
                }
            }
        }
        assertThat(found).as("here it is called: " + word).isEmpty();
    }

    /** In Spanish a number has a comma; with a point it is what is typed at the command line or into a file. */
    @Test
    void numbersOfSpanishPagesHaveAComma() {
        assertThat(LanguageFiles.lines("es", ".pages").values())
                .noneMatch(sentence -> sentence.matches(".*(?<![\\d.])\\d+\\.\\d+(?![\\d.]).*"));
    }
}
