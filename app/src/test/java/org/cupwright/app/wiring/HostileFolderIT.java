package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.wiring.RealProcess.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Data folders that cannot be written or are full, as real file systems in memory; root is needed to mount them. */
class HostileFolderIT {
    @TempDir
    Path files;

    @BeforeEach
    void onlyAsRoot() {
        Mounted.onlyAsRoot();
    }

    @Test
    void aFolderThatCannotBeWrittenIsSaidAndCanStillBeRead() throws IOException, InterruptedException {
        Path outlines = MadeCourse.outlines(files, 1);
        Mounted.on(files, "size=8m", mount -> {
            Path data = mount.resolve("data");
            Result first = RealProcess.typed("import", "--course", "made", "--outlines", outlines, "--data", data);
            assertThat(first.status()).as(first.err()).isZero();
            Mounted.again(mount, "ro");
            String before = RealProcess.hash(mount);
            Result refused = RealProcess.typed("import", "--course", "made", "--outlines", outlines, "--data", data);
            assertThat(refused.status()).as(refused.err()).isEqualTo(1);
            assertThat(refused.err()).contains("Nothing can be written").contains("--data");
            Result read = RealProcess.typed("assess", "--hole", "1", "--data", data);
            assertThat(read.status()).as(read.err()).isZero();
            for (String option : new String[] {"--svg", "--png", "--geojson"}) {
                Result drawing =
                        RealProcess.typed("assess", "--hole", "1", option, mount.resolve("green"), "--data", data);
                assertThat(drawing.status()).as(drawing.err()).isEqualTo(1);
                assertThat(drawing.err()).contains("cannot be written").contains("try:");
            }
            Result absent = RealProcess.typed(
                    "import", "--course", "made", "--outlines", outlines, "--data", mount.resolve("other"));
            assertThat(absent.status()).as(absent.err()).isEqualTo(1);
            assertThat(RealProcess.hash(mount)).isEqualTo(before);
        });
    }

    @Test
    void aFullDiskIsSaidAndNothingIsHalfWritten() throws IOException, InterruptedException {
        Path outlines = MadeCourse.outlines(files, 5);
        Path points = MadeCourse.survey(files, 5, 40_000, 1);
        Mounted.on(files, "size=1m", mount -> {
            String before = RealProcess.hash(mount);
            Result refused = RealProcess.typed(
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
