package org.cupwright.app.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.cupwright.app.cli.command.Serving;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.storage.Memory;
import org.cupwright.app.store.RecentResults;
import org.cupwright.app.store.sqlite.SqliteFolder;

/**
 * Runs command lines in this process on a data folder, on an invented morning. What was worked out for one command is
 * remembered for the next, as an open office remembers it; commands that remember nothing are run by the real program.
 */
public final class InProcess {
    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-20T05:00:00Z"), ZoneOffset.UTC);

    /** Judged greens are some megabytes each. */
    private static final Memory MEMORY = new RecentResults(60);

    private final Path data;
    private final Clock clock;
    private Function<String, Optional<String>> asked = question -> Optional.empty();

    public InProcess(Path data) {
        this(data, CLOCK);
    }

    /** On another morning, or in another zone. */
    InProcess(Path data, Clock clock) {
        this.data = data;
        this.clock = clock;
    }

    /** The same folder so many days later. */
    InProcess daysLater(int days) {
        return new InProcess(data, Clock.offset(CLOCK, Duration.ofDays(days)));
    }

    /** Somebody sits there who answers every question so. */
    InProcess answering(boolean yes) {
        return answering(question -> Optional.of(yes));
    }

    /** Somebody answers each question as it is put. */
    InProcess answering(Function<String, Optional<Boolean>> answer) {
        asked = question -> answer.apply(question).map(yes -> yes ? "yes" : "no");
        return this;
    }

    /** Somebody types the same to every question. */
    InProcess typing(String answer) {
        asked = question -> Optional.of(answer);
        return this;
    }

    /** What a command line came to. */
    public record Result(int status, String out, String err) {}

    public Result run(Object... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        List<String> line =
                new ArrayList<>(Arrays.stream(arguments).map(Object::toString).toList());
        line.addAll(List.of("--data", data.toString()));
        Surroundings surroundings = new Surroundings(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                clock,
                data,
                folder -> new SqliteFolder(folder, clock, MEMORY),
                asked,
                InProcess::openedAndClosed);
        int status = new Cli(surroundings).run(line.toArray(String[]::new));
        return new Result(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** Pages have a server of their own, which other tests open: here they are closed as soon as it is told of them. */
    private static void openedAndClosed(Serving.Request request, Consumer<Serving.Opened> opened, PrintStream err) {
        opened.accept(new Serving.Opened("http://localhost:" + request.port() + "/", Optional.of("ABCD-EFGH")));
    }
}
