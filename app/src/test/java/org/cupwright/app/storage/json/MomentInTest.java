package org.cupwright.app.storage.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;

/** Against the library's own reader of moments. */
class MomentInTest {
    private static final JsonMapper PLAIN = JsonMapper.shared();
    private static final JsonMapper OURS = JsonMapper.builder()
            .addModule(new SimpleModule().addDeserializer(Instant.class, new MomentIn()))
            .build();

    /** Moments as written, and what somebody may have made of them by hand. */
    private static final List<String> FORMS = List.of(
            "2026-06-20T05:40:00Z",
            "2026-06-20T05:40:00.1Z",
            "2026-06-20T05:40:00.123456789Z",
            "2026-06-20T05:40:00.1234567890Z",
            "2026-06-20T05:40:00.Z",
            "2026-06-20T05:40:00+02:00",
            "2026-06-20T05:40Z",
            "2024-02-29T00:00:00Z",
            "2026-02-29T00:00:00Z",
            "2026-04-31T00:00:00Z",
            "2026-06-20T24:00:00Z",
            "2026-06-20T23:59:60Z",
            "2026-06-20T05:60:00Z",
            "2026-13-01T00:00:00Z",
            "2026-00-10T00:00:00Z",
            "1969-12-31T23:59:59Z",
            "0001-01-01T00:00:00Z",
            "2026-06-20t05:40:00z",
            "2026-06-20 05:40:00Z",
            "x",
            "Z",
            "");

    private static Optional<Instant> read(JsonMapper mapper, String text) {
        try {
            return Optional.ofNullable(mapper.readValue('"' + text + '"', Instant.class));
        } catch (JacksonException refused) {
            return Optional.empty();
        }
    }

    @Test
    void handMadeFormsReadAsTheyAlwaysDid() {
        for (String form : FORMS) {
            assertThat(read(OURS, form)).as(form).isEqualTo(read(PLAIN, form));
        }
    }

    @Test
    void anyMomentAndAnySlipReadsAsItAlwaysDid() {
        Random random = new Random(Suite.seed());
        int count = Suite.count("moments", 100_000, 5_000);
        for (int i = 0; i < count; i++) {
            long second = random.nextLong(-70_000_000_000L, 250_000_000_000L);
            int nanos = List.of(0, random.nextInt(1000) * 1_000_000, random.nextInt(1_000_000_000))
                    .get(random.nextInt(3));
            StringBuilder text =
                    new StringBuilder(Instant.ofEpochSecond(second, nanos).toString());
            if (random.nextInt(3) == 0) {
                text.setCharAt(random.nextInt(text.length()), "0159-:TZ.+".charAt(random.nextInt(10)));
            }
            assertThat(read(OURS, text.toString()))
                    .as("%s, seed %d", text, Suite.seed())
                    .isEqualTo(read(PLAIN, text.toString()));
        }
    }
}
