package org.cupwright.app.desk.policy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.cupwright.policy.Setting;
import org.junit.jupiter.api.Test;

/** docs/sources.md has a row for every setting, with its default, and none for a setting that is gone. */
class SourcesPageTest {
    private static final Path PAGE = Path.of("../docs/sources.md");

    @Test
    void everySettingHasARowWithItsDefault() throws IOException {
        String page = Files.readString(PAGE);
        for (Setting<?> setting : Settings.catalogue().settings()) {
            assertThat(page).contains("| `" + setting.key() + "` | " + written(setting));
        }
    }

    @Test
    void noRowIsOfASettingThatIsGone() throws IOException {
        List<String> keys =
                Settings.catalogue().settings().stream().map(Setting::key).toList();
        for (String line : Files.readAllLines(PAGE)) {
            if (line.matches("\\| `[a-z]+\\.[A-Za-z.]+` \\| .* \\| .* \\| .* \\|")) {
                assertThat(keys).contains(line.substring(3, line.indexOf('`', 3)));
            }
        }
    }

    private static <T> String written(Setting<T> setting) {
        String value = setting.type().write(setting.defaultValue());
        return value.isEmpty() ? "–" : value;
    }
}
