package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.cupwright.app.cli.InProcess.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A course that has Spanish set is spoken to in Spanish, in what goes well and in what does not. */
class SpanishIT {
    @TempDir
    Path files;

    private InProcess cupwright;

    @BeforeEach
    void aDoubleGreen() throws IOException {
        cupwright = new InProcess(files.resolve("data")).typing("no");
        String map = MadeCourse.collection(MadeCourse.green("1;2", MadeCourse.WEST));
        Path outline = Files.writeString(files.resolve("doble.geojson"), map);
        done("import", "--course", "doble", "--outlines", outline);
        done("policy", "desk.language=es");
        done("policy", "rotation.sharedGreenLeastMetres=30");
    }

    private Result done(Object... arguments) {
        Result result = cupwright.run(arguments);
        assertThat(result.status()).as(result.err()).isZero();
        return result;
    }

    @Test
    void aYesIsASpanishOne() {
        assertThat(done("plan").out()).contains("uno de otro en su green doble");
        assertThat(cupwright.typing("y").run("publish").out()).contains("Se queda como borrador.");
        assertThat(cupwright.typing("Sí").run("publish").out()).contains(": publicado.");
    }

    @Test
    void aFailureIsToldInTheLanguageThatIsSet() {
        Result unknown = cupwright.run("explain", "--hole", "99");
        assertThat(unknown.status()).isEqualTo(1);
        assertThat(unknown.err())
                .contains("No hay ningún hoyo llamado «99» en el campo doble.", "dónde:", "valor:", "pruebe:");
        Result farOff = cupwright.run("plan", "--date", "1800-01-01");
        assertThat(farOff.err()).contains("no está entre los días de los que se puede hablar");
        assertThat(cupwright.run("explain", "--hole", "99", "--lang", "en").err())
                .contains("There is no hole called \"99\"");
    }

    @Test
    void unitsOfSettingsAndTheColoursOfFlagsAreWordsOfTheLanguage() {
        assertThat(done("policy", "holelocation.edgePaces").out()).contains("4 pasos");
        assertThat(cupwright.run("policy", "holelocation.edgePaces=900").err()).contains("Admite", "pasos");
        assertThat(done("policy", "paper.flagBack").out()).contains("blue");
    }
}
