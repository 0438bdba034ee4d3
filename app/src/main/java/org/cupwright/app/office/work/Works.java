package org.cupwright.app.office.work;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.cupwright.app.office.visit.OfficeHouse;
import org.cupwright.app.office.visit.Visit;
import org.cupwright.app.office.work.Piece.Outcome;
import org.cupwright.app.office.work.Piece.Way;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.springframework.stereotype.Component;

/** All long work: one piece is done at a time, the others wait. What became of a piece is kept for an hour. */
@Component
public final class Works implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(Works.class.getName());

    /** Whoever comes after so many would wait for most of an hour: our choice. */
    static final int MOST_WAITING = 8;

    static final Duration KEPT = Duration.ofHours(1);

    private static final int CLOSING_SECONDS = 8;

    private final OfficeHouse house;
    private final Map<UUID, Piece> pieces = new LinkedHashMap<>();
    private final ExecutorService one = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "long-work");
        thread.setDaemon(true);
        return thread;
    });

    public Works(OfficeHouse house) {
        this.house = house;
    }

    /**
     * Begins a piece of work, or lets it wait for those before it.
     *
     * @param title as it is called on pages
     * @throws Problem when too many wait already
     */
    public synchronized Piece begin(Visit visit, String title, Way way, LongWork work) {
        forgetOld();
        int going = going().size();
        if (going > MOST_WAITING) {
            Count waiting = new Count(going);
            throw Problem.of(Message.of("problem.tooMuchWork", waiting), Message.of("try.tooMuchWork"));
        }
        Piece piece = new Piece(visit.session().ids().get(), visit.session().person(), title, way);
        pieces.put(piece.id(), piece);
        Session session = visit.session();
        one.execute(() -> piece.end(done(piece, session, work)));
        return piece;
    }

    /**
     * A piece of work.
     *
     * @throws Problem when there is none of that id, or it is somebody else's
     */
    public synchronized Piece find(UUID id, Person person) {
        forgetOld();
        Piece piece = Optional.ofNullable(pieces.get(id))
                .orElseThrow(() -> Problem.of(Message.of("problem.noSuchWork"), Message.of("try.noSuchWork")));
        if (!piece.isFor(person)) {
            throw Problem.of("notAllowed", "person", person.name(), new Name(person.name()));
        }
        return piece;
    }

    /** The same; empty where there is none, or none that the person may see. */
    public synchronized Optional<Piece> known(UUID id, Person person) {
        return Optional.ofNullable(pieces.get(id)).filter(piece -> piece.isFor(person));
    }

    /** How many pieces are done before this one is begun. */
    synchronized int before(Piece piece) {
        return Math.max(0, going().indexOf(piece));
    }

    private List<Piece> going() {
        return pieces.values().stream()
                .filter(piece -> piece.outcome().isEmpty())
                .toList();
    }

    private void forgetOld() {
        Instant old = house.clock().instant().minus(KEPT);
        pieces.values()
                .removeIf(piece -> piece.outcome()
                        .filter(became -> became.at().isBefore(old))
                        .isPresent());
    }

    private Outcome done(Piece piece, Session asked, LongWork work) {
        try (DataFolder folder = house.folders().get()) {
            piece.progress().checkStopped();
            Session session =
                    new Session(folder, asked.person(), asked.course(), asked.clock(), asked.ids(), asked.speech());
            return Outcome.of(work.in(session, piece.progress()), house.clock().instant());
        } catch (Problem problem) {
            return Outcome.of(problem, house.clock().instant());
        } catch (OutOfMemoryError full) {
            return Outcome.of(
                    Problem.of(Message.of("problem.memory"), Message.of("try.memory")),
                    house.clock().instant());
        } catch (RuntimeException | Error failure) {
            String reference = piece.id().toString().substring(0, 8);
            LOG.log(System.Logger.Level.ERROR, "reference " + reference, failure);
            return Outcome.defect(reference, house.clock().instant());
        }
    }

    /** Stops what goes on and what waits, and waits a little until it has stopped. */
    @Override
    public void close() {
        synchronized (this) {
            new ArrayList<>(pieces.values()).forEach(Piece::stop);
        }
        one.shutdown();
        try {
            if (!one.awaitTermination(CLOSING_SECONDS, TimeUnit.SECONDS)) {
                LOG.log(System.Logger.Level.WARNING, "long work did not stop in time; nothing of it is kept");
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
