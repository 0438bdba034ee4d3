package org.cupwright.app.wiring;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.policy.PolicyChange;
import org.cupwright.policy.PolicyHistory;

/**
 * A plain process that reads a policy again and again: twice within one reading, with a pause of random length between,
 * and then, still within it, by a second opening of the folder, which sees what was written meanwhile. After each
 * reading it says so in one line of four numbers: how many changes both times of the reading and the second opening
 * saw, and 1 where both times of the reading were the same in full and all changes came in pairs of one value, else 0.
 *
 * <p>Arguments: the data folder, the course, the seed. It ends when it is killed.
 */
public final class PolicyReader {
    private static final int LONGEST_PAUSE_MILLISECONDS = 250;

    private PolicyReader() {}

    public static void main(String[] arguments) {
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
        Path data = Path.of(arguments[0]);
        String course = arguments[1];
        Random random = new Random(Long.parseLong(arguments[2]));
        try (SqliteFolder folder = new SqliteFolder(data, Clock.systemUTC());
                SqliteFolder other = new SqliteFolder(data, Clock.systemUTC())) {
            while (true) {
                String reading = folder.read(stores -> {
                    PolicyHistory first = history(stores, course);
                    pause(random.nextInt(LONGEST_PAUSE_MILLISECONDS));
                    PolicyHistory second = history(stores, course);
                    int meanwhile =
                            other.read(there -> history(there, course).changes().size());
                    return first.changes().size() + " " + second.changes().size() + " " + meanwhile + " "
                            + (first.equals(second) && inPairs(first) ? 1 : 0);
                });
                out.println(reading);
            }
        }
    }

    private static PolicyHistory history(Stores stores, String course) {
        return stores.policies().history(course);
    }

    private static boolean inPairs(PolicyHistory history) {
        List<PolicyChange> changes = history.changes();
        return changes.size() % 2 == 0
                && IntStream.range(0, changes.size() / 2)
                        .allMatch(i -> changes.get(2 * i)
                                .value()
                                .equals(changes.get(2 * i + 1).value()));
    }

    private static void pause(int milliseconds) {
        try {
            Thread.sleep(milliseconds);
        } catch (InterruptedException ended) {
            throw new IllegalStateException(ended);
        }
    }

    /** Starts the process; what it says goes to a file. */
    static Process start(Path folder, String course, long seed, Path said) throws IOException {
        List<String> line = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                PolicyReader.class.getName(),
                folder.toString(),
                course,
                Long.toString(seed));
        return new ProcessBuilder(line)
                .redirectOutput(said.toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }
}
