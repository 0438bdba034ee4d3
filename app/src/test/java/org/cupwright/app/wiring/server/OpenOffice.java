package org.cupwright.app.wiring.server;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.cupwright.app.cli.command.Serving.Opened;
import org.cupwright.app.cli.command.Serving.Request;
import org.cupwright.app.people.Passwords;

/** The pages of a data folder, open in the test's own process. */
public final class OpenOffice implements AutoCloseable {
    /** Rounds of passwords as a power of two: what they cost is no matter here. */
    private static final int QUICK = 4;

    private static final int OPENS_WITHIN_SECONDS = 120;

    /** Whether greens are judged ahead, which is no matter to most tests and costs more than the rest of them. */
    public static final String AHEAD = "cupwright.ahead";

    private final Thread serving;
    private final Opened opened;

    public OpenOffice(Path data, Clock clock, boolean demo) throws InterruptedException {
        this(new Request(data, "127.0.0.1", 0, demo, false, Optional.empty()), clock);
    }

    OpenOffice(Request request, Clock clock) throws InterruptedException {
        if (System.getProperty(AHEAD) == null) {
            System.setProperty(AHEAD, "false");
        }
        BlockingQueue<Opened> told = new LinkedBlockingQueue<>();
        OfficeServer server = new OfficeServer(clock, new SecureRandom(), random -> new Passwords(random, QUICK));
        serving = new Thread(() -> server.serve(request, told::add, System.err), "office");
        serving.start();
        opened = Optional.ofNullable(told.poll(OPENS_WITHIN_SECONDS, TimeUnit.SECONDS))
                .orElseThrow(() -> new IllegalStateException("the pages were not opened"));
    }

    /** An address of the pages. */
    public String at(String path) {
        return opened.address().replaceFirst("/$", "") + path;
    }

    public String code() {
        return opened.code().orElseThrow();
    }

    @Override
    public void close() throws InterruptedException {
        serving.interrupt();
        serving.join();
    }
}
