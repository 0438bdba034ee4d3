package org.cupwright.app.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.cupwright.app.storage.Memory;
import org.cupwright.app.storage.ResultCache;

/**
 * Results as files in the folder {@code cache}, one a result, in a folder of their build. Nobody misses them when they
 * are deleted; no backup holds them.
 *
 * <p>The newest are kept, by when they were last of use; results of other builds go with the first result of this one.
 */
public final class FileCache implements ResultCache {
    /** Every green of a course of eighteen at twenty speeds, some 400 MB. Our choice. */
    static final int MOST_RESULTS = 360;

    private final Path folder;
    private final Optional<String> build;
    private final Clock clock;
    private final Memory memory;

    /** @param build which build of the program computes; nothing is kept where that is not known */
    public FileCache(Path dataFolder, Optional<String> build, Clock clock) {
        this(dataFolder, build, clock, Memory.NONE);
    }

    /**
     * The same, which also remembers.
     *
     * @param memory what is remembered is of this data alone
     */
    public FileCache(Path dataFolder, Optional<String> build, Clock clock, Memory memory) {
        this.folder = dataFolder.resolve("cache");
        this.build = build;
        this.clock = clock;
        this.memory = memory;
    }

    @Override
    public <T> T remembered(Object key, Supplier<T> work) {
        return memory.of(key, work);
    }

    @Override
    public Optional<byte[]> find(String name) {
        return build.map(own -> folder.resolve(own).resolve(name)).flatMap(this::read);
    }

    private Optional<byte[]> read(Path file) {
        try {
            if (!Files.isRegularFile(file)) {
                return Optional.empty();
            }
            byte[] result = Files.readAllBytes(file);
            if (Files.isWritable(file)) {
                Files.setLastModifiedTime(file, FileTime.from(clock.instant()));
            }
            return Optional.of(result);
        } catch (IOException gone) {
            tell("a result could not be read", gone);
            return Optional.empty();
        }
    }

    @Override
    public void keep(String name, byte[] result) {
        if (build.isEmpty() || !Files.isWritable(folder.getParent())) {
            return;
        }
        Path own = folder.resolve(build.get());
        try {
            if (!Files.isDirectory(own)) {
                removeOtherBuilds();
                Files.createDirectories(own);
            }
            write(own.resolve(name), result);
            removeOldest(own);
        } catch (IOException noRoom) {
            tell("a result could not be kept", noRoom);
        }
    }

    private void write(Path file, byte[] result) throws IOException {
        Path part = Files.createTempFile(file.getParent(), ".", ".part");
        try {
            Files.write(part, result);
            Files.setLastModifiedTime(part, FileTime.from(clock.instant()));
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    @Override
    public void clear() {
        try {
            removeOtherBuilds();
        } catch (IOException inUse) {
            tell("results could not be taken away", inUse);
        }
    }

    private void removeOtherBuilds() throws IOException {
        if (Files.isDirectory(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.deleteIfExists(path);
                }
            }
        }
    }

    private record Result(Path file, FileTime used) {}

    private static void removeOldest(Path own) throws IOException {
        List<Result> results = new ArrayList<>();
        try (Stream<Path> all = Files.list(own)) {
            for (Path file : all.toList()) {
                results.add(new Result(file, Files.getLastModifiedTime(file)));
            }
        }
        results.sort(Comparator.comparing(Result::used));
        for (int i = 0; i < results.size() - MOST_RESULTS; i++) {
            Files.deleteIfExists(results.get(i).file());
        }
    }

    private static void tell(String what, IOException why) {
        System.getLogger(FileCache.class.getName()).log(System.Logger.Level.DEBUG, what, why);
    }
}
