package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.cupwright.app.wiring.RealProcess.Result;
import org.junit.jupiter.api.Assumptions;

/** A small file system in memory, for folders that are full or cannot be written; root is needed to mount it. */
final class Mounted {
    private Mounted() {}

    static void onlyAsRoot() {
        boolean root = "root".equals(System.getProperty("user.name"));
        if (!root) {
            System.out.println("not run: not root on this machine, so nothing can be mounted");
        }
        Assumptions.assumeTrue(root, "not root on this machine");
    }

    interface Work {
        void on(Path mounted) throws IOException, InterruptedException;
    }

    static void on(Path files, String options, Work work) throws IOException, InterruptedException {
        Path mount = Files.createDirectories(files.resolve("mount"));
        Result made = RealProcess.run(List.of("mount", "-t", "tmpfs", "-o", options, "tmpfs", mount.toString()));
        assertThat(made.status()).as("mount: " + made.err()).isZero();
        try {
            work.on(mount);
        } finally {
            Result gone = RealProcess.run(List.of("umount", mount.toString()));
            assertThat(gone.status()).as("umount: " + gone.err()).isZero();
        }
    }

    /** Mounts it again with other options, such as {@code ro}. */
    static void again(Path mount, String options) throws IOException, InterruptedException {
        Result done = RealProcess.run(List.of("mount", "-o", "remount," + options, mount.toString()));
        assertThat(done.status()).as("remount: " + done.err()).isZero();
    }
}
