package org.cupwright.app.wiring.server;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands in the headers of a server in front, and what does not belong there. */
class SaidPlaceTest {
    @ParameterizedTest
    @CsvSource({
        "203.0.113.7, 203.0.113.7",
        "203.0.113.7:4711, 203.0.113.7",
        "2001:db8::7, 2001:db8::7",
        "[2001:db8::7], 2001:db8::7",
        "[2001:db8::7]:4711, 2001:db8::7",
        "::ffff:203.0.113.7, ::ffff:203.0.113.7"
    })
    void anAddressIsReadWithoutItsPort(String said, String address) {
        assertThat(SaidAddress.of(said)).contains(address);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "unknown", "_hidden", "office.example", "1.2.3", "<script>", "203.0.113.7 and more"})
    void whatIsNoAddressIsNone(String said) {
        assertThat(SaidAddress.of(said)).isEmpty();
        assertThat(SaidAddress.of("1".repeat(1000))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "https, office.example, https://office.example, 443",
        "http, office.example, http://office.example, 80",
        "https, office.example:8443, https://office.example:8443, 8443",
        "https, office.example:443, https://office.example, 443",
        "https, [2001:db8::7]:8443, https://[2001:db8::7]:8443, 8443"
    })
    void aPlaceIsReadWithItsPort(String scheme, String said, String address, int port) {
        assertThat(SaidPlace.of(scheme, said)).hasValueSatisfying(place -> {
            assertThat(place.address()).isEqualTo(address);
            assertThat(place.port()).isEqualTo(port);
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "office example", "office.example/path", "a@b", "office.example:99999", "é.example"})
    void whatIsNoPlaceIsNone(String said) {
        assertThat(SaidPlace.of("https", said)).isEmpty();
    }
}
