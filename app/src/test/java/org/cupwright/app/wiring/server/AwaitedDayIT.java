package org.cupwright.app.wiring.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.cupwright.app.cli.DemoFolder;
import org.cupwright.app.cli.InProcess;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Today's page while its greens are judged, with nobody's patience, and after that. */
class AwaitedDayIT {
    private static final String PATIENCE = "cupwright.patience";

    @TempDir
    private Path folder;

    @BeforeEach
    void noPatience() throws Exception {
        System.setProperty(PATIENCE, "0");
        DemoFolder.copyTo(folder.resolve("data"));
        assertThat(new InProcess(folder.resolve("data")).run("plan").status()).isZero();
    }

    @AfterEach
    void patience() {
        System.clearProperty(PATIENCE);
    }

    @Test
    void saysWhatToKnowFirstAndHowFarItHasCome_thenShowsThePlan() throws Exception {
        try (OpenOffice office = new OpenOffice(folder.resolve("data"), InProcess.CLOCK, true)) {
            Caller caller = new Caller(office);
            String waiting = caller.get("/").body();
            assertThat(waiting)
                    .contains(Caller.AWAITED, "The day&#39;s greens are being judged")
                    .doesNotContain("data-hole")
                    .containsSubsequence("Sat 20 Jun 2026", "Know first", "<progress");
            HttpResponse<String> part = part(caller, office);
            while (part.headers().firstValue("HX-Refresh").isEmpty()) {
                assertThat(part.body()).contains("<progress").doesNotContain("<html");
                Thread.sleep(50);
                part = part(caller, office);
            }
        }
        System.clearProperty(PATIENCE);
        try (OpenOffice office = new OpenOffice(folder.resolve("data"), InProcess.CLOCK, true)) {
            assertThat(new Caller(office).awaited("/").body()).contains("data-hole=\"18\"");
        }
    }

    private static HttpResponse<String> part(Caller caller, OpenOffice office) {
        return caller.send(HttpRequest.newBuilder(URI.create(office.at("/")))
                .header("HX-Request", "true")
                .build());
    }
}
