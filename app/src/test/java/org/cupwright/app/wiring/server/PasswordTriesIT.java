package org.cupwright.app.wiring.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.cupwright.app.cli.InProcess;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who tries passwords where one's own is changed tries them at the door. The clock stands: so does the wait. */
class PasswordTriesIT {
    private static final String NAME = "Left at the desk";
    private static final String PASSWORD = "three plain oars";

    @Test
    void triesAtThePageOfOnesPasswordCountAtTheDoor(@TempDir Path folder) throws Exception {
        try (OpenOffice office = new OpenOffice(folder.resolve("data"), InProcess.CLOCK, false)) {
            Caller left = new Caller(office);
            assertThat(left.join(office.code(), NAME, PASSWORD)).isEqualTo("/sign-in?joined");
            assertThat(left.signIn(NAME, PASSWORD)).isEqualTo("/");
            for (int i = 0; i < 5; i++) {
                left.post("/password", "/password", Map.of("old", "wrong password " + i, "fresh", "four plain oars"));
            }
            assertThat(new Caller(office).signIn(NAME, PASSWORD)).startsWith("/sign-in?wait=");
        }
    }
}
