package org.cupwright.app.session;

import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine;
import org.cupwright.app.storage.AuditLine.About;
import org.cupwright.app.storage.AuditLine.Who;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.message.Message.Argument;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/**
 * One request's surroundings: who asks, for which course, when, through which door. Made where the request comes in;
 * use cases get everything of the kind from here.
 *
 * @param folder what is kept
 * @param person who asks
 * @param course which course is meant
 * @param clock for today and for when something was recorded
 * @param ids makes the ids of entries
 * @param speech how the answer is to be worded
 */
public record Session(
        DataFolder folder, Person person, CourseChoice course, Clock clock, Supplier<UUID> ids, Speech speech) {
    /** Answers from what is kept, all of it as it is at one moment. */
    public <T> T read(Function<Stores, T> work) {
        return folder.read(work);
    }

    /**
     * Decides and writes in one transaction: what the work reads is what it writes upon, whoever else is writing.
     *
     * @throws Problem when the person has no right to it; nothing is changed then, nor when the work throws
     */
    public <T> T decide(Right right, Function<Stores, T> work) {
        checkMay(right);
        return folder.write(work);
    }

    /** Answers from what is kept to those alone who have the right. */
    public <T> T look(Right right, Function<Stores, T> work) {
        checkMay(right);
        return read(work);
    }

    private void checkMay(Right right) {
        if (!person.role().may(right)) {
            throw Problem.of("notAllowed", "person", person.name(), new Name(person.name()));
        }
    }

    /** A line of the audit trail: what this session's person did now; to be written in the same transaction. */
    public AuditLine did(AuditKind what, About about, Optional<Argument> before, Optional<Argument> after) {
        return new AuditLine(now(), new Who(person.id(), person.name()), what, about, before, after);
    }

    /** Decides where it is meant, and else only looks what would be decided: the work must not write then. */
    public <T> T decideIf(boolean meant, Right right, Function<Stores, T> work) {
        return meant ? decide(right, work) : read(work);
    }

    public Course course(Stores stores) {
        return course.in(stores);
    }

    public Instant now() {
        return clock.instant();
    }

    /** The same, said by somebody or something else. */
    public Session by(String name) {
        return new Session(folder, new Person(name, person.role()), course, clock, ids, speech);
    }

    /** The same, with ids that are made otherwise. */
    public Session naming(Supplier<UUID> named) {
        return new Session(folder, person, course, clock, named, speech);
    }

    /** The same, by another clock: that of where something was written down before it came here. */
    public Session at(Clock other) {
        return new Session(folder, person, course, other, ids, speech);
    }

    /** The same for another course. */
    public Session about(String courseId) {
        return new Session(folder, person, new CourseChoice(Optional.of(courseId)), clock, ids, speech);
    }
}
