package org.cupwright.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.cupwright.formats.BoundedInput;
import org.cupwright.formats.InventedMap;
import org.cupwright.message.Message;
import org.junit.jupiter.api.Test;

class FindingKindTest {
    @Test
    void namesItselfAsScriptsAndSentencesExpect() {
        assertThat(FindingKind.OUTLINE_CROSSES_ITSELF.jsonName()).isEqualTo("outlineCrossesItself");
        Finding finding = Finding.of(FindingKind.NO_GREENS, Where.file(), new Message.Count(3));
        assertThat(finding.says()).isEqualTo(Message.of("survey.noGreens", new Message.Count(3)));
        assertThat(finding.tryThis().key()).isEqualTo("survey.noGreens.try");
    }

    @Test
    void boundsWhatIsRead() {
        Finding finding = InventedMap.troubleOf(() -> {
            try {
                BoundedInput.text(InventedMap.bytes("0123456789"), 9).readLine();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        assertThat(finding.kind()).isEqualTo(FindingKind.FILE_TOO_LARGE);
    }
}
