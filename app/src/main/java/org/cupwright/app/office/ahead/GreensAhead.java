package org.cupwright.app.office.ahead;

import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.green.JudgeAhead;
import org.cupwright.app.desk.paper.ShowDay;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.visit.OfficeHouse;
import org.cupwright.message.Problem;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/**
 * Judges the greens of today and tomorrow, of every course, as soon as the pages are open and again whenever something
 * changed: what is judged already is remembered, so that looking whether anything did costs little.
 */
@Component
public final class GreensAhead implements SmartLifecycle {
    /** How long nothing is looked at after a look, s: our choice. */
    private static final long PAUSE_SECONDS = 20;

    private static final System.Logger LOG = System.getLogger(GreensAhead.class.getName());

    /** Whether it does; a test whose business is another one says no. */
    private static final String WANTED = "${cupwright.ahead:true}";

    private final OfficeHouse house;
    private final boolean wanted;
    private volatile Progress progress = Progress.unheard();
    private ScheduledExecutorService worker;

    public GreensAhead(OfficeHouse house, @Value(WANTED) boolean wanted) {
        this.house = house;
        this.wanted = wanted;
    }

    @Override
    public boolean isAutoStartup() {
        return wanted;
    }

    @Override
    public synchronized void start() {
        progress = Progress.unheard();
        worker = Executors.newSingleThreadScheduledExecutor(work -> {
            Thread thread = new Thread(work, "greens-ahead");
            thread.setDaemon(true);
            thread.setPriority(Thread.MIN_PRIORITY);
            return thread;
        });
        worker.scheduleWithFixedDelay(this::judge, 0, PAUSE_SECONDS, TimeUnit.SECONDS);
    }

    @Override
    public synchronized void stop() {
        progress.stop();
        worker.shutdownNow();
        worker = null;
    }

    @Override
    public synchronized boolean isRunning() {
        return worker != null;
    }

    /** Whatever keeps it from being done keeps whoever asks from it too, and is told there. */
    private void judge() {
        try (DataFolder folder = house.folders().get()) {
            for (String course : folder.read(stores -> stores.courses().ids())) {
                judge(house.ofNobody(folder).about(course));
            }
        } catch (Problem mendable) {
            LOG.log(System.Logger.Level.DEBUG, "nothing was judged ahead", mendable);
        } catch (RuntimeException failed) {
            LOG.log(System.Logger.Level.WARNING, "nothing was judged ahead", failed);
        }
    }

    private void judge(Session session) {
        LocalDate today = session.read(stores -> CourseToday.of(session.course(stores), session.clock()));
        for (LocalDate day : List.of(today, today.plusDays(1))) {
            DayQuestion question = DayQuestion.of(day);
            boolean planned =
                    new ShowDay(session).of(question, progress).paper().isPresent();
            if (!planned) {
                new JudgeAhead(session).day(question, progress);
            }
        }
    }
}
