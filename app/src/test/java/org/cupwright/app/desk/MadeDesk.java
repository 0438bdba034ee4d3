package org.cupwright.app.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.session.CourseChoice;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.session.Speech;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.storage.PlanChange;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.json.FactJson;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.texts.Door;
import org.cupwright.cupchange.CrewNote.NoteToNext;
import org.cupwright.cupchange.CrewNote.Severity;
import org.cupwright.cupchange.CrewNote.SomethingOdd;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Payload;
import org.cupwright.units.UnitSystem;

/** An invented course of three greens with a planned day, some entries, a level reading and a usual spot. */
final class MadeDesk {
    static final String COURSE = "made";
    static final LocalDate DAY = LocalDate.of(2026, 6, 20);
    static final UUID NOTE = id("note");
    static final UUID ODD = id("odd");
    static final String DRAWN = "1-usual-1";

    /** What the maker's level reading on the first hole is called. */
    static final String READING = "aedf8ef3";

    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-20T12:00:00Z"), ZoneOffset.UTC);

    private MadeDesk() {}

    private static UUID id(String name) {
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
    }

    /** Makes it in a folder. */
    static void make(Path path) {
        try (SqliteFolder folder = new SqliteFolder(path, CLOCK)) {
            Session asking = asking(folder, "the maker", Role.SUPERINTENDENT);
            WritingUseCase.all().stream()
                    .filter(one -> List.of("map", "same level reading").contains(one.name()))
                    .forEach(one -> one.work().accept(asking));
            WritingUseCase.plan(asking, 1);
            WritingUseCase.drawnOnTheFirst(asking);
            WritingUseCase.bunker(asking);
            asking.folder().write(stores -> {
                stores.facts().add(fact(NOTE, new NoteToNext("an invented note")));
                stores.facts().add(fact(ODD, new SomethingOdd(Severity.SOON, "an invented ring", Optional.empty())));
                return stores;
            });
        }
    }

    private static Fact fact(UUID id, Payload payload) {
        Instant when = Instant.parse("2026-06-19T05:00:00Z");
        return new Fact(id, 1, when, when, Optional.empty(), "Ida", COURSE, Optional.empty(), payload);
    }

    /** A line of a logbook file. */
    static String line() {
        return FactJson.write(fact(id("line"), new NoteToNext("a note from elsewhere"))) + "\n";
    }

    /** The map of so many greens. */
    static String map(int greens) {
        try {
            Path folder = Files.createTempDirectory("made");
            return Files.readString(MadeCourse.outlines(folder, greens));
        } catch (IOException full) {
            throw new UncheckedIOException(full);
        }
    }

    /** A session in which entries get ids that follow from who asks. */
    static Session asking(DataFolder folder, String name, Role role) {
        AtomicInteger count = new AtomicInteger();
        return new Session(
                folder,
                new Person(name, role),
                new CourseChoice(Optional.of(COURSE)),
                CLOCK,
                () -> id(name + count.incrementAndGet()),
                new Speech(Door.COMMANDS, "en", UnitSystem.METRIC, 0.914));
    }

    /** All that counts of what is kept, as text: two folders that say the same hold the same. */
    static String told(DataFolder folder) {
        return folder.read(MadeDesk::told);
    }

    private static String told(Stores stores) {
        StringBuilder told = new StringBuilder();
        told.append(stores.courses().ids())
                .append(stores.courses().find(COURSE).orElseThrow().holes().size());
        told.append('\n')
                .append(stores.courses().find(COURSE).orElseThrow().holes().stream()
                        .map(hole -> hole.green().areaSquareMetres() + " " + hole.hazards() + " " + hole.lineOfPlay())
                        .toList());
        told.append('\n').append(stores.policies().history(COURSE).changes());
        told.append('\n')
                .append(stores.plans()
                        .find(COURSE, DAY)
                        .map(plan -> plan.state() + " " + plan.basis() + plan.asked()
                                + plan.change().map(PlanChange::person)));
        told.append('\n').append(stores.surveys().levels(COURSE).byHole());
        told.append('\n').append(stores.drawn().of(COURSE));
        stores.facts().all(COURSE).stream()
                .map(fact -> fact.receivedAt(Instant.EPOCH).toString())
                .sorted()
                .forEach(fact -> told.append('\n').append(fact));
        return told.toString();
    }
}
