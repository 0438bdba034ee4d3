package org.cupwright.app.wiring;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import org.cupwright.app.cli.Cli;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.wiring.server.OfficeServer;

/** The program: commands without any application context, so that they start at once. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        System.exit(run(utf8(FileDescriptor.out), utf8(FileDescriptor.err), arguments));
    }

    /** Runs one command line with the given outputs; answers the exit status. */
    static int run(PrintStream out, PrintStream err, String... arguments) {
        Clock clock = Clock.system(ZoneId.systemDefault());
        Path home = Path.of(System.getProperty("user.home"));
        return new Cli(new Surroundings(
                        out,
                        err,
                        clock,
                        home,
                        folder -> new SqliteFolder(folder, clock),
                        AtTerminal::ask,
                        new OfficeServer(clock)))
                .run(arguments);
    }

    /** Whatever the machine's own character set is: the words have dots, dashes and degrees in them. */
    private static PrintStream utf8(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
    }
}
