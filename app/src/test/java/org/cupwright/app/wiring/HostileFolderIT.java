package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.wiring.RealProcess.Result;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Data folders that cannot be written or are full, as real file systems in memory; root is needed to mount them. */
class HostileFolderIT {
    @TempDir
    Path files;

    @BeforeEach
    void onlyAsRoot() {
        boolean root = "root".equals(System.getProperty("user.name"));
        if (!root) {
            System.out.println("HostileFolderIT not run: not root on this machine, so nothing can be mounted");
        }
        Assumptions.assumeTrue(root, "not root on this machine");
    }

    private interface Work {
        void on(Path mounted) throws IOException, InterruptedException;
    }

    private void mounted(String options, Work work) throws IOException, InterruptedException {
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

    private void remounted(Path mount, String options) throws IOException, InterruptedException {
        Result done = RealProcess.run(List.of("mount", "-o", "remount," + options, mount.toString()));
        assertThat(done.status()).as("remount: " + done.err()).isZero();
    }

    @Test
    void aFolderThatCannotBeWrittenIsSaidAndCanStillBeRead() throws IOException, InterruptedException {
        Path outlines = MadeCourse.outlines(files, 1);
        mounted("size=8m", mount -> {
            Path data = mount.resolve("data");
            Result first = RealProcess.cupwright("import", "--course", "made", "--outlines", outlines, "--data", data);
            assertThat(first.status()).as(first.err()).isZero();
            remounted(mount, "ro");
            String before = RealProcess.hash(mount);
            Result refused =
                    RealProcess.cupwright("import", "--course", "made", "--outlines", outlines, "--data", data);
            assertThat(refused.status()).as(refused.err()).isEqualTo(1);
            assertThat(refused.err()).contains("Nothing can be written").contains("--data");
            Result read = RealProcess.cupwright("assess", "--hole", "1", "--data", data);
            assertThat(read.status()).as(read.err()).isZero();
            for (String option : new String[] {"--svg", "--png", "--geojson"}) {
                Result drawing =
                        RealProcess.cupwright("assess", "--hole", "1", option, mount.resolve("green"), "--data", data);
                assertThat(drawing.status()).as(drawing.err()).isEqualTo(1);
                assertThat(drawing.err()).contains("cannot be written").contains("try:");
            }
            Result absent = RealProcess.cupwright(
                    "import", "--course", "made", "--outlines", outlines, "--data", mount.resolve("other"));
            assertThat(absent.status()).as(absent.err()).isEqualTo(1);
            assertThat(RealProcess.hash(mount)).isEqualTo(before);
        });
    }

    @Test
    void aFullDiskIsSaidAndNothingIsHalfWritten() throws IOException, InterruptedException {
        Path outlines = MadeCourse.outlines(files, 5);
        Path points = MadeCourse.survey(files, 5, 40_000, 1);
        mounted("size=1m", mount -> {
            String before = RealProcess.hash(mount);
            Result refused = RealProcess.cupwright(
                    "import",
                    "--course",
                    "made",
                    "--outlines",
                    outlines,
                    "--elevation",
                    points,
                    "--crs",
                    "EPSG:32626",
                    "--data",
                    mount.resolve("data"));
            assertThat(refused.status()).as(refused.err()).isEqualTo(1);
            assertThat(refused.err()).contains("disk is full");
            assertThat(RealProcess.hash(mount)).isEqualTo(before);
        });
    }
}
