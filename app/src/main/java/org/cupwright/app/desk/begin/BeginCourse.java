package org.cupwright.app.desk.begin;

import java.util.Optional;
import java.util.function.UnaryOperator;
import org.cupwright.app.session.CourseChoice;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.Stores;
import org.cupwright.message.Problem;

/**
 * The course that is being set up, as it stands. Every step that is done is one transaction: what somebody else has
 * kept meanwhile of another step stays.
 *
 * @param session of whoever sets it up; which course it names does not matter, as there is none
 */
public record BeginCourse(Session session) {
    /** As it stands; empty where nothing was begun. */
    public Optional<SettingUp> find() {
        return session.look(Right.SURVEY, stores -> stores.setUp().find());
    }

    /** Whether a course can be begun or gone on with here: there is none yet. */
    public boolean isOpen() {
        return session.look(Right.SURVEY, stores -> stores.courses().ids().isEmpty());
    }

    /** @throws Problem if there is a course already */
    public void checkOpen() {
        session.look(Right.SURVEY, stores -> {
            refuseBesideACourse(stores);
            return stores;
        });
    }

    /** As it stands, begun and not done. */
    public SettingUp stands() {
        return session.look(Right.SURVEY, BeginCourse::stands);
    }

    static SettingUp stands(Stores stores) {
        refuseBesideACourse(stores);
        return stores.setUp().find().orElseThrow(() -> Problem.of("begin.placeFirst", "course", ""));
    }

    /** More courses are brought in as files: their settings are their own from the start. */
    static void refuseBesideACourse(Stores stores) {
        if (!stores.courses().ids().isEmpty()) {
            String known = String.join(", ", stores.courses().ids());
            throw Problem.of("begin.there", "course", known);
        }
    }

    /** Keeps a step. */
    SettingUp keep(UnaryOperator<SettingUp> step) {
        return session.decide(Right.SURVEY, stores -> {
            SettingUp next = step.apply(stands(stores));
            stores.setUp().add(next);
            return next;
        });
    }

    /** The same for the settings, which are those of every course as long as there is none. */
    static Session ofNoCourse(Session session) {
        return new Session(
                session.folder(),
                session.person(),
                new CourseChoice(Optional.empty()),
                session.clock(),
                session.ids(),
                session.speech());
    }
}
