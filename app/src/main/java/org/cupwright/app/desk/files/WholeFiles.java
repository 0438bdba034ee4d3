package org.cupwright.app.desk.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/**
 * Writes files that a person asked for: all of them whole, or none. Each is written beside its place under another name
 * and then put there in one move; if one cannot be put, those before it are put back as they were.
 */
public final class WholeFiles {
    private static final byte[] PDF = "%PDF-".getBytes(StandardCharsets.US_ASCII);

    private final Map<Path, byte[]> contents;
    /** Written beside their targets, not put there yet. */
    private final Map<Path, Path> fresh = new LinkedHashMap<>();
    /** What was at a target before. */
    private final Map<Path, Path> former = new LinkedHashMap<>();

    private final List<Path> placed = new ArrayList<>();
    private final Deque<Path> made = new ArrayDeque<>();

    private WholeFiles(Map<Path, byte[]> contents) {
        this.contents = contents;
    }

    /**
     * Writes files into folders that are there.
     *
     * @param data where nothing is written by a name that a person gives
     * @param replace whether files that are there already may be replaced
     * @throws Problem when one of them cannot be written; nothing is then changed
     */
    public static void write(DataFolder data, Map<Path, byte[]> contents, boolean replace) {
        new WholeFiles(resolved(data, contents, replace)).write(Optional.empty());
    }

    private static Map<Path, byte[]> resolved(DataFolder data, Map<Path, byte[]> contents, boolean replace) {
        Map<Path, byte[]> files = resolved(data, contents);
        files.keySet().stream().filter(file -> !replace && Files.exists(file)).forEach(there -> {
            throw problem("exists", there, there.toString());
        });
        return files;
    }

    /**
     * Writes papers into a folder, which is made when it is not there, and not left behind when they cannot be written.
     * They are made anew each day by names of their own: earlier ones are replaced, anything else of their name is not.
     */
    public static void writePapers(DataFolder data, Path folder, Map<String, byte[]> contents) {
        writePapers(data, folder, contents, Map.of(), false);
    }

    /**
     * The same with files beside them, by names that a person gives: all of them are written, or none.
     *
     * @param replace whether files beside that are there already may be replaced
     */
    public static void writePapers(
            DataFolder data, Path folder, Map<String, byte[]> contents, Map<Path, byte[]> beside, boolean replace) {
        Map<Path, byte[]> files = papers(data, folder, contents);
        files.putAll(resolved(data, beside, replace));
        new WholeFiles(files).write(Optional.of(folder.toAbsolutePath().normalize()));
    }

    /**
     * Asks before anything else is done whether papers of some names belong into a folder at all.
     *
     * @throws Problem when they do not
     */
    public static void checkPapers(DataFolder data, Path folder, List<String> names) {
        Map<String, byte[]> empty = new LinkedHashMap<>();
        names.forEach(name -> empty.put(name, new byte[0]));
        papers(data, folder, empty);
    }

    private static Map<Path, byte[]> papers(DataFolder data, Path folder, Map<String, byte[]> contents) {
        Path place = folder.toAbsolutePath().normalize();
        if (Files.exists(place) && !Files.isDirectory(place)) {
            throw problem("notAFolder", place, place.toString());
        }
        Map<Path, byte[]> named = new LinkedHashMap<>();
        contents.forEach((name, bytes) -> named.put(place.resolve(name), bytes));
        Map<Path, byte[]> files = resolved(data, named);
        files.keySet().stream().filter(file -> !isPaper(file)).forEach(other -> {
            throw problem("noPaper", other, other.toString());
        });
        return files;
    }

    /** Whether there is nothing yet, or a PDF. */
    private static boolean isPaper(Path file) {
        if (!Files.exists(file)) {
            return true;
        }
        try (InputStream in = Files.newInputStream(file)) {
            return Arrays.equals(in.readNBytes(PDF.length), PDF);
        } catch (IOException failed) {
            throw problem(file, failed);
        }
    }

    /** The places themselves, where links lead; devices, folders and whatever is among the data are refused. */
    private static Map<Path, byte[]> resolved(DataFolder data, Map<Path, byte[]> contents) {
        Map<Path, byte[]> resolved = new LinkedHashMap<>();
        contents.forEach((path, bytes) -> {
            if (data.holds(path)) {
                throw problem("amongData", path, path.toString());
            }
            resolved.put(real(path.toAbsolutePath().normalize()), bytes);
        });
        return resolved;
    }

    private static Path real(Path path) {
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            throw problem("notAFile", path, path.toString());
        }
        try {
            return Files.exists(path) ? path.toRealPath() : path;
        } catch (IOException failed) {
            throw problem(path, failed);
        }
    }

    private void write(Optional<Path> folder) {
        Path current = folder.orElse(null);
        try {
            if (folder.isPresent()) {
                make(folder.get());
            }
            for (Map.Entry<Path, byte[]> file : contents.entrySet()) {
                current = file.getKey();
                prepare(current, file.getValue());
            }
            for (Path target : contents.keySet()) {
                current = target;
                Files.move(fresh.get(target), target, StandardCopyOption.ATOMIC_MOVE);
                fresh.remove(target);
                placed.add(target);
            }
            removeAll(former.values());
        } catch (IOException failed) {
            undo();
            throw problem(current, failed);
        }
    }

    /** Makes a folder and those above it that are missing, and remembers which. */
    private void make(Path folder) throws IOException {
        Deque<Path> missing = new ArrayDeque<>();
        for (Path up = folder; up != null && Files.notExists(up); up = up.getParent()) {
            missing.push(up);
        }
        for (Path next : missing) {
            Files.createDirectory(next);
            made.push(next);
        }
    }

    private void prepare(Path target, byte[] bytes) throws IOException {
        Path beside = Files.createTempFile(target.getParent(), ".cupwright", ".part");
        fresh.put(target, beside);
        Files.write(beside, bytes);
        othersMayRead(beside);
        if (contents.size() > 1 && Files.exists(target)) {
            Path copy = Files.createTempFile(target.getParent(), ".cupwright", ".former");
            former.put(target, copy);
            Files.copy(target, copy, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.COPY_ATTRIBUTES);
        }
    }

    /** The golf shop prints it; files made under another name first are private otherwise. */
    private static void othersMayRead(Path file) throws IOException {
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
        }
    }

    private void undo() {
        try {
            for (Path target : placed) {
                if (former.containsKey(target)) {
                    Files.move(former.remove(target), target, StandardCopyOption.ATOMIC_MOVE);
                } else {
                    Files.deleteIfExists(target);
                }
            }
            removeAll(fresh.values());
            removeAll(former.values());
            removeAll(made);
        } catch (IOException worse) {
            throw new UncheckedIOException("files could be neither written nor put back", worse);
        }
    }

    private static void removeAll(Iterable<Path> paths) throws IOException {
        for (Path path : paths) {
            Files.deleteIfExists(path);
        }
    }

    private static Problem problem(Path path, IOException failed) {
        String folder = String.valueOf(path.getParent());
        if (failed instanceof AccessDeniedException) {
            return problem("refused", path, folder);
        }
        if (failed instanceof NoSuchFileException) {
            return problem("noFolder", path, folder);
        }
        boolean told = failed instanceof FileSystemException system && system.getReason() != null;
        return problem("failed", path, told ? ((FileSystemException) failed).getReason() : failed.getMessage());
    }

    private static Problem problem(String kind, Path path, String value) {
        return Problem.of(
                Message.of("problem.output." + kind),
                Message.of("where.place", new Name(path.toString())),
                value,
                Message.of("try.output." + kind));
    }
}
