package org.cupwright.app.desk.turf;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneId;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import org.cupwright.cupchange.Logbook;
import org.cupwright.cupchange.MadeFacts;
import org.cupwright.testing.Suite;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;
import org.junit.jupiter.api.Test;

class FoldedTurfTest {
    private static final ZoneId ZONE = ZoneId.of("America/New_York");

    private static TurfState state(Random random) {
        return TurfFold.fold(
                TurfState.empty(ZONE),
                Logbook.of(MadeFacts.sequence(random, random.nextInt(400))).facts());
    }

    @Test
    void readsWhatWasWritten() {
        int states = Suite.count("turf states as bytes", 1000, 50);
        int marked = 0;
        int cutters = 0;
        for (int i = 0; i < states; i++) {
            TurfState state = state(new Random(Suite.seed() * 32_452_843 + i));
            assertThat(FoldedTurf.BYTES
                            .read(FoldedTurf.BYTES.write(state))
                            .orElseThrow()
                            .equals(state))
                    .as("state %d of seed %d", i, Suite.seed())
                    .isTrue();
            marked += state.greens().values().stream()
                    .mapToInt(green -> green.marked().size())
                    .sum();
            cutters += state.cutters().size();
        }
        assertThat(marked).as("pieces of marked ground").isGreaterThan(states);
        assertThat(cutters).as("cutters").isGreaterThan(states);
    }

    @Test
    void damagedOrCutShortIsNeverAnotherState() {
        Random random = new Random(Suite.seed());
        TurfState state = state(random);
        byte[] bytes = FoldedTurf.BYTES.write(state);
        for (int length = 0; length < bytes.length; length += 1 + bytes.length / 200) {
            assertThat(FoldedTurf.BYTES.read(Arrays.copyOf(bytes, length)).isPresent())
                    .as("the first %d of %d bytes are read, seed %d", length, bytes.length, Suite.seed())
                    .isFalse();
        }
        int refused = 0;
        int tried = 0;
        for (int at = 0; at < bytes.length; at += 1 + bytes.length / 200) {
            byte[] damaged = bytes.clone();
            damaged[at] ^= (byte) (1 << random.nextInt(8));
            Optional<TurfState> read = FoldedTurf.BYTES.read(damaged);
            assertThat(read.orElse(state).equals(state))
                    .as("a bit of byte %d of %d turned over is another state, seed %d", at, bytes.length, Suite.seed())
                    .isTrue();
            refused += read.isEmpty() ? 1 : 0;
            tried++;
        }
        assertThat(refused).as("refused of %d", tried).isGreaterThan(tried * 9 / 10);
    }
}
