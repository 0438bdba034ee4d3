package org.cupwright.app.office.today;

import java.time.Duration;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.Progress.Step;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.paper.ShowDay;
import org.cupwright.app.session.CourseChoice;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.visit.OfficeHouse;
import org.cupwright.app.visit.Visit;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Problem;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * Days as they stand. Where their greens are not judged yet, which may take a minute, that goes on in the background:
 * whoever asks waits a moment for it, is told how far it has come, and asks again.
 */
@Component
public final class AwaitedDays implements AutoCloseable {
    /** Longer nobody should look at a page that does not come, ms (our choice); a test has none. */
    private static final String PATIENCE = "${cupwright.patience:1500}";

    /** So many days are looked at at once, and so many may wait for that: our choice, more than a club has people. */
    private static final int AT_ONCE = 8;

    private static final int MOST_WAITING = 100;

    /** Pages ask every second: our choice. */
    private static final Executor SOON = CompletableFuture.delayedExecutor(5, TimeUnit.SECONDS);

    private final OfficeHouse house;
    private final Duration patience;
    private final Map<Asked, Run> runs = new ConcurrentHashMap<>();
    private final ExecutorService judging = Executors.newFixedThreadPool(AT_ONCE, work -> {
        Thread thread = new Thread(work, "awaited-day");
        thread.setDaemon(true);
        return thread;
    });

    @Autowired
    public AwaitedDays(OfficeHouse house, @Value(PATIENCE) long patienceMilliseconds) {
        this(house, Duration.ofMillis(patienceMilliseconds));
    }

    AwaitedDays(OfficeHouse house, Duration patience) {
        this.house = house;
        this.patience = patience;
    }

    private record Asked(Person person, CourseChoice course, LocalDate date) {}

    /** Work under way. */
    private static final class Run {
        private volatile Step step = new Step("", 0, 0);
        private volatile boolean awaited;
        private final Progress progress = new Progress(now -> step = now);
        private final CompletableFuture<Shown> shown = new CompletableFuture<>();
    }

    /**
     * A day as it was found.
     *
     * @param remarks what has to be known of what was read for it
     */
    private record Shown(ShowDay.Answer answer, Set<Message> remarks) {}

    /**
     * What comes of a moment's waiting.
     *
     * @param answer the day, as it stood after it was asked for; empty as long as its greens are being judged
     * @param remarks what has to be known of what was read for it
     * @param step how far that has come
     */
    record Outcome(Optional<ShowDay.Answer> answer, Set<Message> remarks, Step step) {}

    /** @throws RuntimeException what keeps the day from being shown */
    Outcome of(Visit visit) {
        Asked asked = new Asked(visit.session().person(), visit.session().course(), visit.date());
        Run own = new Run();
        Run run = Optional.ofNullable(runs.putIfAbsent(asked, own)).orElse(own);
        if (run == own) {
            begin(asked, own, visit);
        }
        try {
            Shown shown = run.shown.get(patience.toMillis(), TimeUnit.MILLISECONDS);
            // Begun for an earlier request, it may have missed what was written since; its greens are judged now.
            Shown now = run == own ? shown : day(visit.session(), visit.question(), run.progress);
            return new Outcome(Optional.of(now.answer), now.remarks, run.step);
        } catch (TimeoutException goesOn) {
            run.awaited = true;
            return new Outcome(Optional.empty(), Set.of(), run.step);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            return new Outcome(Optional.empty(), Set.of(), run.step);
        } catch (ExecutionException failed) {
            throw thrown(failed.getCause());
        }
    }

    /**
     * Begins the work. It is forgotten when it ends, or soon after where somebody was told to ask again: whoever does
     * is shown the day then, however long that takes, and nothing is held for somebody who went away.
     */
    private void begin(Asked asked, Run run, Visit visit) {
        run.shown.whenComplete((shown, failed) -> {
            if (run.awaited) {
                SOON.execute(() -> runs.remove(asked, run));
            } else {
                runs.remove(asked, run);
            }
        });
        if (runs.size() > MOST_WAITING) {
            run.shown.completeExceptionally(Problem.of(
                    Message.of("problem.tooMuchWork", new Count(MOST_WAITING)), Message.of("try.tooMuchWork")));
            return;
        }
        judging.execute(() -> {
            try {
                run.shown.complete(day(visit.session(), visit.question(), run.progress));
            } catch (RuntimeException | Error failed) {
                run.shown.completeExceptionally(failed);
            }
        });
    }

    private static RuntimeException thrown(Throwable cause) {
        if (cause instanceof Error error) {
            throw error;
        }
        return cause instanceof RuntimeException failure ? failure : new IllegalStateException(cause);
    }

    private Shown day(Session asked, DayQuestion question, Progress progress) {
        try (DataFolder folder = house.folders().get()) {
            Session session =
                    new Session(folder, asked.person(), asked.course(), asked.clock(), asked.ids(), asked.speech());
            ShowDay.Answer answer = new ShowDay(session).of(question, progress);
            return new Shown(answer, folder.remarks());
        }
    }

    @Override
    public void close() {
        runs.values().forEach(run -> run.progress.stop());
        judging.shutdownNow();
    }
}
