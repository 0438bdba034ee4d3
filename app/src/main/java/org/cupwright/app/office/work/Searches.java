package org.cupwright.app.office.work;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReference;
import org.cupwright.app.answers.Lines;
import org.cupwright.app.office.frame.Besides;
import org.cupwright.app.office.work.Piece.Way;
import org.cupwright.app.session.Person;
import org.cupwright.app.storage.Versions;
import org.cupwright.app.visit.Visit;
import org.cupwright.message.Problem;
import org.springframework.stereotype.Component;

/**
 * What pages seek that takes a moment where it is remembered, and longer where it is not. Who asks for the same again
 * waits for the same, and has it once it is there, however slow the machine; what rests on anything older than what is
 * kept by then is sought anew.
 */
@Component
public final class Searches {
    private final Works works;
    private final Map<Asked, Search<?>> going = new ConcurrentHashMap<>();

    public Searches(Works works) {
        this.works = works;
    }

    private record Asked(Person person, String title, Way way, Versions known) {}

    /** Work under way, and what it found. */
    private record Search<T>(Piece piece, AtomicReference<Sought<T>> found) {}

    /**
     * Seeks what a page shows.
     *
     * @param title as it is called on pages; what is found under one title is always of one type
     * @param way where somebody is led who waited on the page of the work
     * @throws Problem when it cannot be found, or too much is sought already
     */
    @SuppressWarnings("unchecked") // a title names results of one type
    public <T> Sought<T> sought(Visit visit, String title, Way way, Seeking<T> seeking) {
        going.values().removeIf(search -> !works.knows(search.piece()));
        Asked asked = new Asked(visit.session().person(), title, way, known(visit));
        Search<T> search = (Search<T>) going.compute(
                asked,
                (same, before) ->
                        before != null && !before.piece().stopping() ? before : begun(visit, title, way, seeking));
        try {
            if (works.isDone(search.piece())) {
                going.remove(asked, search);
                return search.found().get();
            }
        } catch (Problem notFound) {
            going.remove(asked, search);
            throw notFound;
        }
        if (search.piece().outcome().isPresent()) {
            going.remove(asked, search); // a failure, which its page tells of
        }
        return new Sought<>(Optional.empty(), new Besides(Set.of()), Optional.of(search.piece()));
    }

    private <T> Search<T> begun(Visit visit, String title, Way way, Seeking<T> seeking) {
        AtomicReference<Sought<T>> found = new AtomicReference<>();
        LongWork work = (session, progress) -> {
            T one = seeking.in(session, progress);
            Besides besides = new Besides(session.folder().remarks());
            found.set(new Sought<>(Optional.of(one), besides, Optional.empty()));
            return new Lines(visit.texts());
        };
        return new Search<>(works.begun(visit, title, way, work, Hands.Way.SOUGHT), found);
    }

    private static Versions known(Visit visit) {
        String course = visit.session().course().id().orElse("");
        return visit.session().read(stores -> stores.versions(course, visit.date()));
    }
}
