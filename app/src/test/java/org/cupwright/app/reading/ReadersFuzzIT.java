package org.cupwright.app.reading;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every reader of files, with whatever bytes: it reads, or says what a person can mend. In the plain checks the files
 * in {@code ReadersFuzzITInputs} are read; {@code ./check fuzz} looks for others.
 */
class ReadersFuzzIT {
    @TempDir
    static Path files;

    private static ReadingDesk desk;

    @BeforeAll
    static void open() throws IOException {
        desk = new ReadingDesk(files);
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    @FuzzTest
    void outlinesGeoJson(byte[] bytes) {
        FileKind.OUTLINES_GEO_JSON.reads(desk, bytes);
    }

    @FuzzTest
    void outlinesOsm(byte[] bytes) {
        FileKind.OUTLINES_OSM.reads(desk, bytes);
    }

    @FuzzTest
    void points(byte[] bytes) {
        FileKind.POINTS.reads(desk, bytes);
    }

    @FuzzTest
    void levelSpots(byte[] bytes) {
        FileKind.LEVEL_SPOTS.reads(desk, bytes);
    }

    @FuzzTest
    void drawnGeoJson(byte[] bytes) {
        FileKind.DRAWN_GEO_JSON.reads(desk, bytes);
    }

    @FuzzTest
    void drawnCsv(byte[] bytes) {
        FileKind.DRAWN_CSV.reads(desk, bytes);
    }

    @FuzzTest
    void ground(byte[] bytes) {
        FileKind.GROUND.reads(desk, bytes);
    }

    @FuzzTest
    void notebook(byte[] bytes) {
        FileKind.NOTEBOOK.reads(desk, bytes);
    }

    @FuzzTest
    void weather(byte[] bytes) {
        FileKind.WEATHER.reads(desk, bytes);
    }

    @FuzzTest
    void entryTable(byte[] bytes) {
        FileKind.ENTRY_TABLE.reads(desk, bytes);
    }

    @FuzzTest
    void entryLines(byte[] bytes) {
        FileKind.ENTRY_LINES.reads(desk, bytes);
    }

    @FuzzTest
    void carriedRound(byte[] bytes) {
        FileKind.CARRIED_ROUND.reads(desk, bytes);
    }

    @FuzzTest
    void photo(byte[] bytes) {
        FileKind.PHOTO.reads(desk, bytes);
    }

    @FuzzTest
    void backup(byte[] bytes) {
        FileKind.BACKUP.reads(desk, desk.patchedBackup(bytes));
    }
}
