package org.cupwright.app.office.work;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.office.work.Piece.Outcome;
import org.cupwright.app.office.work.Piece.Way;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.visit.OfficeHouse;
import org.cupwright.app.visit.Visit;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * All long work: one piece is done at a time, the others wait; what is usually done in a moment goes on beside it. What
 * became of a piece is kept for an hour.
 */
@Component
public final class Works implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(Works.class.getName());

    static final Duration KEPT = Duration.ofHours(1);

    private static final int CLOSING_SECONDS = 8;

    /** Longer nobody should look at a page that does not come (our choice); a test has none. */
    private static final Duration USUAL = Duration.ofMillis(1500);

    private static final String PATIENCE = "${cupwright.patience:1500}";

    private final OfficeHouse house;
    private final Duration patience;
    private final Map<UUID, Piece> pieces = new LinkedHashMap<>();
    private final Hands hands = new Hands();

    @Autowired
    public Works(OfficeHouse house, @Value(PATIENCE) long patienceMilliseconds) {
        this(house, Duration.ofMillis(patienceMilliseconds));
    }

    /** With the usual patience. */
    public Works(OfficeHouse house) {
        this(house, USUAL);
    }

    public Works(OfficeHouse house, Duration patience) {
        this.house = house;
        this.patience = patience;
    }

    /**
     * Begins a piece of work, or lets it wait for those before it.
     *
     * @param title as it is called on pages
     * @throws Problem when too many wait already
     */
    public Piece begin(Visit visit, String title, Way way, LongWork work) {
        return begun(visit, title, way, work, Hands.Way.ONE_BY_ONE);
    }

    /**
     * Does what takes a moment as a rule, and minutes where greens have to be judged for it. What is done within a
     * moment was done in the request; what is not goes on as long work, beside that which waits.
     *
     * @param title as it is called on pages
     * @return the address to go on to: where the work leads, or its own page
     * @throws Problem when it could not be done, or too much goes on already
     */
    public String soon(Visit visit, String title, Way way, LongWork work) {
        Piece piece = begun(visit, title, way, work, Hands.Way.IN_A_MOMENT);
        return isDone(piece) ? way.done() : WorkView.address(piece);
    }

    /** Waits a moment for it; what is done by then is forgotten, since whoever asked has it. */
    boolean isDone(Piece piece) {
        Optional<Outcome> became = piece.await(patience);
        became.flatMap(Outcome::problem).ifPresent(problem -> {
            forget(piece);
            throw problem;
        });
        boolean done = became.flatMap(Outcome::answer).isPresent();
        if (done) {
            forget(piece);
        }
        return done;
    }

    synchronized Piece begun(Visit visit, String title, Way way, LongWork work, Hands.Way by) {
        forgetOld();
        int going = going(by).size();
        if (going > by.most()) {
            Count waiting = new Count(going);
            throw Problem.of(Message.of("problem.tooMuchWork", waiting), Message.of("try.tooMuchWork"));
        }
        Piece piece = new Piece(visit.session().ids().get(), visit.session().person(), title, way.of(visit), by);
        pieces.put(piece.id(), piece);
        Session session = visit.session();
        hands.give(by, () -> piece.end(done(piece, session, work)));
        return piece;
    }

    private synchronized void forget(Piece piece) {
        pieces.remove(piece.id());
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

    /** Whether it is kept still. */
    synchronized boolean knows(Piece piece) {
        forgetOld();
        return pieces.containsKey(piece.id());
    }

    /** The same; empty where there is none, or none that the person may see. */
    public synchronized Optional<Piece> known(UUID id, Person person) {
        return Optional.ofNullable(pieces.get(id)).filter(piece -> piece.isFor(person));
    }

    /** How many pieces are done before this one is begun. */
    synchronized int before(Piece piece) {
        boolean waits = piece.hands() == Hands.Way.ONE_BY_ONE;
        return waits ? Math.max(0, going(Hands.Way.ONE_BY_ONE).indexOf(piece)) : 0;
    }

    private List<Piece> going(Hands.Way by) {
        return pieces.values().stream()
                .filter(piece -> piece.outcome().isEmpty() && piece.hands() == by)
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
        hands.close();
        try {
            if (!hands.ended(CLOSING_SECONDS)) {
                LOG.log(System.Logger.Level.WARNING, "long work did not stop in time; nothing of it is kept");
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
