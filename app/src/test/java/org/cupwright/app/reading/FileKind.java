package org.cupwright.app.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.cupwright.message.Problem;

/** Every kind of file that people hand in, and what reads it. */
enum FileKind {
    OUTLINES_GEO_JSON("outlinesGeoJson", 10, ReadingDesk::outlines),
    OUTLINES_OSM("outlinesOsm", 10, ReadingDesk::outlines),
    POINTS("points", 9, ReadingDesk::points),
    LEVEL_SPOTS("levelSpots", 8, ReadingDesk::levels),
    DRAWN_GEO_JSON("drawnGeoJson", 8, ReadingDesk::drawn),
    DRAWN_CSV("drawnCsv", 8, ReadingDesk::drawn),
    GROUND("ground", 8, ReadingDesk::ground),
    NOTEBOOK("notebook", 8, EntryReading::notebook),
    WEATHER("weather", 8, EntryReading::weather),
    ENTRY_TABLE("entryTable", 8, EntryReading::table),
    ENTRY_LINES("entryLines", 7, EntryReading::lines),
    CARRIED_ROUND("carriedRound", 4, EntryReading::round),
    PHOTO("photo", 3, ReadingDesk::photo),
    BACKUP("backup", 1, ReadingDesk::backup);

    private final String seeds;
    private final int share;
    private final BiConsumer<ReadingDesk, byte[]> reader;

    FileKind(String seeds, int share, BiConsumer<ReadingDesk, byte[]> reader) {
        this.seeds = seeds;
        this.share = share;
        this.reader = reader;
    }

    /** Of a hundred mutated inputs, how many are of this kind. */
    int share() {
        return share;
    }

    /**
     * Reads a file.
     *
     * @return whether it reads; else what a person can mend was said, in words
     */
    boolean reads(ReadingDesk desk, byte[] bytes) {
        try {
            reader.accept(desk, bytes);
            return true;
        } catch (Problem refused) {
            desk.words().check(refused);
            return false;
        }
    }

    /** The invented files with which its fuzz test begins. */
    List<byte[]> seeds(ReadingDesk desk) throws IOException {
        List<byte[]> read = new ArrayList<>();
        try (Stream<Path> all = Files.list(folder())) {
            for (Path seed : all.sorted().toList()) {
                read.add(this == BACKUP ? desk.patchedBackup(Files.readAllBytes(seed)) : Files.readAllBytes(seed));
            }
        }
        return read;
    }

    private Path folder() {
        return Path.of(
                System.getProperty("user.dir"),
                "src/test/resources/org/cupwright/app/reading/ReadersFuzzITInputs",
                seeds);
    }
}
