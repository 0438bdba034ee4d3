package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What somebody reads when the pages cannot be opened. */
class ServeIT {
    @TempDir
    Path folder;

    /** Exit status, then what was said. */
    private record Said(int status, String text) {}

    private Said serve(String... options) {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream both = new PrintStream(said, true, StandardCharsets.UTF_8);
        List<String> arguments = new ArrayList<>(
                List.of("serve", "--data", folder.resolve("data").toString()));
        arguments.addAll(List.of(options));
        int status = Main.run(both, both, arguments.toArray(String[]::new));
        return new Said(status, said.toString(StandardCharsets.UTF_8));
    }

    @Test
    void aPortThatIsTaken() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            Said said = serve("--port", "" + taken.getLocalPort());
            assertThat(said.status()).isEqualTo(1);
            assertThat(said.text())
                    .contains("Another program listens at port " + taken.getLocalPort(), "--port")
                    .doesNotContain("Exception");
        }
    }

    /** An address for documentation (RFC 5737), which no machine has. */
    @Test
    void anAddressThatIsNotOurs() {
        Said said = serve("--port", "0", "--bind", "192.0.2.1", "--behind-proxy");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.text())
                .contains("192.0.2.1 is no address of this machine")
                .doesNotContain("Exception");
    }

    @Test
    void aCertificateThatIsNone() throws IOException {
        Path file = Files.writeString(folder.resolve("office.pem"), "not a certificate");
        Said said = serve("--port", "0", "--certificate", file.toString(), "--key", file.toString());
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.text()).contains("Certificate and key cannot be used", "office.pem");
    }

    @Test
    void othersReachItOnlyEncrypted() {
        Said said = serve("--bind", "0.0.0.0");
        assertThat(said.status()).isEqualTo(2);
        assertThat(said.text()).contains("--certificate", "--behind-proxy");
    }

    @Test
    void theDemoIsForThisMachineAlone() {
        Said said = serve("--demo", "--bind", "0.0.0.0", "--behind-proxy");
        assertThat(said.status()).isEqualTo(2);
    }
}
