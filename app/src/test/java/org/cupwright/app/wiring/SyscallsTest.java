package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Traces written by hand, as strace writes them. */
class SyscallsTest {
    private static final String WRITE = "7 pwrite64(5</d/a.part>, \"x\"..., 4096, 0) = 4096";
    private static final String SYNC = "7 fsync(5</d/a.part>)                       = 0";
    private static final String RENAME = "7 rename(\"/d/a.part\", \"/d/a\")           = 0";
    private static final String SYNC_FOLDER = "7 fsync(6</d>)                       = 0";

    private static List<String> unsure(String... lines) {
        Syscalls calls = Syscalls.of(List.of(lines));
        return calls.unsure("/d", calls.calls().size());
    }

    @Test
    void whatIsSyncedBeforeItsNameAndInItsFolderIsSure() {
        assertThat(unsure(WRITE, SYNC, RENAME, SYNC_FOLDER)).isEmpty();
        assertThat(unsure(
                        WRITE,
                        "7 fsync(5</d/a.part> <unfinished ...>",
                        "8 unlink(\"/d/b\") = 0",
                        "7 <... fsync resumed>) = 0",
                        RENAME,
                        SYNC_FOLDER))
                .isEmpty();
        assertThat(unsure("7 write(5</d/b>, \"x\", 1) = 1", "7 unlink(\"/d/b\") = 0"))
                .isEmpty();
        assertThat(unsure("7 write(1</e/out>, \"x\", 1) = 1")).isEmpty();
    }

    @Test
    void whatIsSyncedTooLateOrNotAtAllIsTold() {
        assertThat(unsure(WRITE, RENAME, SYNC, SYNC_FOLDER)).containsExactly("written and not synced: /d/a.part");
        assertThat(unsure(SYNC, WRITE)).containsExactly("written and not synced: /d/a.part");
        assertThat(unsure(WRITE, "7 fsync(5</d/a.part>) = -1 EIO (Input/output error)"))
                .containsExactly("written and not synced: /d/a.part");
        assertThat(unsure(WRITE, SYNC, SYNC_FOLDER, RENAME)).containsExactly("renamed, the folder not synced: /d/a");
        assertThat(unsure("7 pwrite64(5</d/a.db-wal>, \"x\", 1, 0) = 1", "7 unlink(\"/d/a.db-wal\") = 0"))
                .containsExactly("written and not synced: /d/a.db-wal");
        Syscalls early = Syscalls.of(List.of(WRITE, "7 write(1</e/out>, \"kept\", 4) = 4", SYNC));
        assertThat(early.unsure("/d", early.first(call -> call.path().equals("/e/out"))))
                .containsExactly("written and not synced: /d/a.part");
    }
}
