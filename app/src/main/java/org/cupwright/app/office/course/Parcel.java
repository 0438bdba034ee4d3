package org.cupwright.app.office.course;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.desk.files.SourceFile;

/**
 * Files that somebody handed in together and has not brought in yet.
 *
 * @param id by which it is brought in
 * @param person who handed it in
 * @param what what the files are
 * @param fields what was said of them
 * @param files by the name of the field
 * @param since when it was handed in
 */
record Parcel(
        UUID id, String person, What what, Map<String, String> fields, Map<String, List<Kept>> files, Instant since) {
    /** What files can be. */
    enum What {
        GROUND,
        WEATHER,
        HISTORY
    }

    /**
     * One file.
     *
     * @param name what the person calls it
     * @param path where it lies meanwhile
     */
    record Kept(String name, Path path) {
        SourceFile source() {
            return new SourceFile(name, () -> Files.newInputStream(path));
        }
    }

    /** Whether it takes longer to read than a page may: a survey is fitted to every green. */
    boolean isLong() {
        return what == What.GROUND && !all("elevation").isEmpty();
    }

    List<SourceFile> all(String field) {
        return files.getOrDefault(field, List.of()).stream().map(Kept::source).toList();
    }

    Optional<SourceFile> one(String field) {
        return all(field).stream().findFirst();
    }

    String text(String field) {
        return fields.getOrDefault(field, "").strip();
    }

    Optional<String> find(String field) {
        return Optional.of(text(field)).filter(text -> !text.isEmpty());
    }
}
