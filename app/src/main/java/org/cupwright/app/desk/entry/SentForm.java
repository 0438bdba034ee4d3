package org.cupwright.app.desk.entry;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.cupwright.app.session.Session;
import org.cupwright.message.Problem;

/**
 * A form that may be sent twice, by two clicks or by going back: what it says is kept once. The ids of its entries
 * follow from its own, which was made with it.
 *
 * @param session who sends it
 * @param id the form's own
 */
public record SentForm(Session session, UUID id) {
    /**
     * Keeps what the form says.
     *
     * @param work keeps it, in the session it is given
     * @return what the work answers; empty where the form had been sent before
     */
    public <T> Optional<T> once(Function<Session, T> work) {
        if (isKept()) {
            return Optional.empty();
        }
        try {
            return Optional.of(work.apply(session.naming(new Ids(id)::next)));
        } catch (Problem refused) {
            if (isKept()) { // sent again at the same moment, and refused for what it had just kept itself
                return Optional.empty();
            }
            throw refused;
        }
    }

    /** An entry of the logbook or a record of training. */
    private boolean isKept() {
        return session.read(stores -> stores.facts().find(id).isPresent()
                || stores.training().find(id).isPresent());
    }

    /** The form's own id is the first entry's, so that it can be looked for. */
    private record Ids(UUID form, AtomicInteger given) {
        Ids(UUID form) {
            this(form, new AtomicInteger());
        }

        UUID next() {
            int number = given.getAndIncrement();
            return number == 0 ? form : UUID.nameUUIDFromBytes((form + "/" + number).getBytes(StandardCharsets.UTF_8));
        }
    }
}
