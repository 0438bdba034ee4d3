package org.cupwright.app.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.imageio.ImageIO;
import org.cupwright.app.texts.LanguageFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a telephone is told and given to put the page among its own. */
class InstallTest {
    private static final int PAPER = 0xfffdfaf3;
    private static final int HOLE = 0xffa4431d;

    private static BufferedImage picture(PageIcon icon) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(icon.png()));
    }

    @ParameterizedTest
    @EnumSource
    void anIconHasItsSizeTheMarkInItsMiddleAndPaperInItsCorners(PageIcon icon) throws IOException {
        BufferedImage picture = picture(icon);
        int last = icon.pixels() - 1;
        assertThat(List.of(picture.getWidth(), picture.getHeight())).containsOnly(icon.pixels());
        assertThat(picture.getRGB(last / 2, last / 2)).isEqualTo(HOLE);
        for (int x : List.of(0, last)) {
            assertThat(List.of(picture.getRGB(x, 0), picture.getRGB(x, last))).containsOnly(PAPER);
        }
    }

    /** A telephone cuts it to a shape of its own: four fifths of it stay, whatever the shape (recalled). */
    @Test
    void whateverShapeItIsCutToTheMarkIsWhole() throws IOException {
        BufferedImage picture = picture(PageIcon.MASKABLE);
        double middle = picture.getWidth() / 2.0;
        int farthest = 0;
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                if (picture.getRGB(x, y) != PAPER) {
                    farthest = Math.max(farthest, (int) Math.hypot(x + 0.5 - middle, y + 0.5 - middle));
                }
            }
        }
        assertThat(farthest).isBetween((int) (0.3 * picture.getWidth()), (int) (0.4 * picture.getWidth()));
    }

    @Test
    void theManifestSpeaksEveryLanguageOfOneAndTheSamePage() {
        InstallController controller = new InstallController();
        Set<String> names = new TreeSet<>();
        for (String language : LanguageFiles.languages()) {
            JsonNode manifest =
                    JsonMapper.shared().readTree(controller.manifest(language).getBody());
            assertThat(manifest.path("lang").asString()).isEqualTo(language);
            assertThat(List.of(manifest.path("id"), manifest.path("start_url"), manifest.path("scope")))
                    .allMatch(node -> node.asString().equals("/round"));
            assertThat(manifest.path("icons")).hasSize(3);
            names.add(manifest.path("short_name").asString());
        }
        assertThat(names).hasSize(LanguageFiles.languages().size());
        JsonNode none = JsonMapper.shared().readTree(controller.manifest("xx").getBody());
        assertThat(none.path("lang").asString()).isEqualTo("en");
    }
}
