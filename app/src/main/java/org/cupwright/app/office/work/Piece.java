package org.cupwright.app.office.work;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.cupwright.app.answers.Lines;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.Progress.Step;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Role;
import org.cupwright.app.visit.Visit;
import org.cupwright.message.Problem;

/** A piece of long work: whose, how far it has come, and what became of it. Safe to be looked at while it goes on. */
public final class Piece {
    private final UUID id;
    private final Person whose;
    private final String title;
    private final Way way;
    private final Hands.Way hands;
    private final Progress progress;
    private volatile Optional<Step> step = Optional.empty();
    private volatile boolean stopping;
    private final CompletableFuture<Outcome> outcome = new CompletableFuture<>();

    /** @param hands how it is done */
    Piece(UUID id, Person whose, String title, Way way, Hands.Way hands) {
        this.id = id;
        this.whose = whose;
        this.title = title;
        this.way = way;
        this.hands = hands;
        this.progress = new Progress(now -> step = Optional.of(now));
    }

    /**
     * Where it leads.
     *
     * @param done the address of the page to go to once it is done, without {@code work}, which says by which piece
     * @param back the address of the page from which it was begun
     */
    public record Way(String done, String back) {
        /** The same about the visit's course. */
        Way of(Visit visit) {
            return new Way(visit.inCourse(done), visit.inCourse(back));
        }
    }

    /**
     * What became of it; one of the first three is there.
     *
     * @param answer what it came to, in words
     * @param problem why it could not be done, or that it was stopped
     * @param reference a failure of the program's own, under this name in its log
     * @param at when
     */
    public record Outcome(Optional<Lines> answer, Optional<Problem> problem, Optional<String> reference, Instant at) {
        static Outcome of(Lines answer, Instant at) {
            return new Outcome(Optional.of(answer), Optional.empty(), Optional.empty(), at);
        }

        static Outcome of(Problem problem, Instant at) {
            return new Outcome(Optional.empty(), Optional.of(problem), Optional.empty(), at);
        }

        static Outcome defect(String reference, Instant at) {
            return new Outcome(Optional.empty(), Optional.empty(), Optional.of(reference), at);
        }
    }

    public UUID id() {
        return id;
    }

    /** As it is called on pages. */
    public String title() {
        return title;
    }

    public String back() {
        return way.back();
    }

    /** The page to go to once it is done. */
    public String next() {
        return way.done() + (way.done().contains("?") ? "&" : "?") + "work=" + id;
    }

    /** How far it has come; empty as long as it has not begun, or told nothing. */
    public Optional<Step> step() {
        return step;
    }

    /** What became of it; empty as long as it goes on. */
    public Optional<Outcome> outcome() {
        return Optional.ofNullable(outcome.getNow(null));
    }

    /** The same, after so long at most. */
    Optional<Outcome> await(Duration patience) {
        try {
            return Optional.of(outcome.get(patience.toMillis(), TimeUnit.MILLISECONDS));
        } catch (TimeoutException goesOn) {
            return Optional.empty();
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        } catch (ExecutionException never) {
            throw new IllegalStateException(never);
        }
    }

    /** What it came to, in words; empty as long as it goes on, and where it came to nothing. */
    public Optional<Lines> answer() {
        return outcome().flatMap(Outcome::answer);
    }

    Hands.Way hands() {
        return hands;
    }

    /** Whether it was to stop. */
    public boolean stopping() {
        return stopping;
    }

    /** Only whoever began it may see it, and who answers for the greens. */
    boolean isFor(Person person) {
        boolean begun = whose.id().isPresent() && whose.id().equals(person.id());
        return begun || person.role() == Role.SUPERINTENDENT;
    }

    void stop() {
        stopping = true;
        progress.stop();
    }

    Progress progress() {
        return progress;
    }

    void end(Outcome became) {
        outcome.complete(became);
    }
}
