package org.cupwright.app.office.course;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.cupwright.app.answers.Lines;
import org.cupwright.app.office.course.Parcel.Kept;
import org.cupwright.app.office.course.Parcel.What;
import org.cupwright.message.Problem;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.stereotype.Component;
import org.springframework.util.MultiValueMap;
import org.springframework.web.multipart.MultipartFile;

/**
 * Files that were handed in, until they are brought in: in a temporary folder of this process, so long and so many as
 * somebody may need who reads what was found in them.
 */
@Component
final class HandedIn implements DisposableBean {
    /** Our choices: a parcel is read in minutes, and few people hand in any at once. */
    private static final Duration LONGEST = Duration.ofHours(2);

    private static final int MOST = 8;

    private static final int LONGEST_NAME = 120;

    private final Map<UUID, Parcel> parcels = new LinkedHashMap<>();
    private final Map<UUID, FilesRead.Read> looked = new HashMap<>();
    private Path folder;

    /** Keeps what was handed in. */
    synchronized Parcel keep(
            String person,
            What what,
            Map<String, String> fields,
            MultiValueMap<String, MultipartFile> files,
            Instant now) {
        forget(now);
        Map<String, List<Kept>> kept = new LinkedHashMap<>();
        try {
            for (Map.Entry<String, List<MultipartFile>> field : files.entrySet()) {
                kept.put(field.getKey(), kept(field.getValue()));
            }
        } catch (IOException full) {
            throw Problem.of("files.notTaken", "request", "");
        }
        Parcel parcel = new Parcel(UUID.randomUUID(), person, what, Map.copyOf(fields), kept, now);
        parcels.put(parcel.id(), parcel);
        return parcel;
    }

    private List<Kept> kept(List<MultipartFile> files) throws IOException {
        List<Kept> kept = new ArrayList<>();
        for (MultipartFile file : files) {
            if (!file.isEmpty()) {
                if (folder == null) {
                    folder = Files.createTempDirectory("cupwright-files");
                }
                Path path = folder.resolve(UUID.randomUUID().toString());
                file.transferTo(path);
                kept.add(new Kept(name(file.getOriginalFilename()), path));
            }
        }
        return kept;
    }

    /** Its last part, with nothing in it that is no part of a name. */
    private static String name(String given) {
        String last = given == null ? "" : given.replaceAll("^.*[/\\\\]", "").replaceAll("[\\p{Cntrl}]", "");
        String name = last.isBlank() ? "file" : last;
        return name.substring(0, Math.min(name.length(), LONGEST_NAME));
    }

    /** What somebody handed in; empty where it was brought in, is too old, or another's. */
    synchronized Optional<Parcel> find(UUID id, String person) {
        return Optional.ofNullable(parcels.get(id))
                .filter(parcel -> parcel.person().equals(person));
    }

    /** Looks at a parcel, and keeps what was found as long as the parcel; what cannot be read is dropped at once. */
    FilesRead.Read look(Parcel parcel, FilesRead reading) {
        try {
            FilesRead.Read read = reading.of(parcel, Set.of(), false);
            looked(parcel, read);
            return read;
        } catch (Problem bad) {
            drop(parcel);
            throw bad;
        }
    }

    /** Brings a parcel in, and drops it. */
    Lines bring(Parcel parcel, FilesRead reading, Set<String> accepted) {
        Lines said = reading.of(parcel, accepted, true).said();
        drop(parcel);
        return said;
    }

    private synchronized void looked(Parcel parcel, FilesRead.Read read) {
        if (parcels.containsKey(parcel.id())) {
            looked.put(parcel.id(), read);
        }
    }

    /** What was found in a parcel; empty as long as it was not looked at. */
    synchronized Optional<FilesRead.Read> found(Parcel parcel) {
        return Optional.ofNullable(looked.get(parcel.id()));
    }

    /** What was brought in, or is no longer wanted. */
    synchronized void drop(Parcel parcel) {
        parcels.remove(parcel.id());
        looked.remove(parcel.id());
        parcel.files().values().forEach(files -> files.forEach(file -> delete(file.path())));
    }

    private void forget(Instant now) {
        List<Parcel> all = List.copyOf(parcels.values());
        for (int i = 0; i < all.size(); i++) {
            boolean old = all.get(i).since().plus(LONGEST).isBefore(now);
            if (old || all.size() - i >= MOST) {
                drop(all.get(i));
            }
        }
    }

    @Override
    public synchronized void destroy() {
        List.copyOf(parcels.values()).forEach(this::drop);
        if (folder != null) {
            delete(folder);
        }
    }

    private static void delete(Path path) {
        try {
            Files.deleteIfExists(path);
        } catch (IOException stays) {
            System.getLogger(HandedIn.class.getName())
                    .log(System.Logger.Level.WARNING, "a temporary file stays", stays);
        }
    }
}
