package org.cupwright.app.desk.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFilesTest {
    private static final byte[] NEW = {1, 2, 3};
    private static final byte[] OLD = {9};

    @TempDir
    Path folder;

    private static Map<String, byte[]> two() {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("first", NEW);
        files.put("second", NEW);
        return files;
    }

    @Test
    void writesIntoAFolderThatIsMade() throws IOException {
        Path out = folder.resolve("a").resolve("b");
        WholeFiles.write(out, two());
        assertThat(out).isDirectoryContaining(file -> file.endsWith("first"));
        assertThat(Files.readAllBytes(out.resolve("second"))).isEqualTo(NEW);
        assertThat(out.toFile().list()).hasSize(2);
    }

    @Test
    void replacesWhatIsThereAndLeavesNothingElse() throws IOException {
        Files.write(folder.resolve("first"), OLD);
        WholeFiles.write(folder, two());
        assertThat(Files.readAllBytes(folder.resolve("first"))).isEqualTo(NEW);
        assertThat(folder.toFile().list()).hasSize(2);
    }

    @Test
    void refusesAFolderInAFilesPlaceAndChangesNothing() throws IOException {
        Files.write(folder.resolve("first"), OLD);
        Files.createDirectory(folder.resolve("second"));
        assertThatThrownBy(() -> WholeFiles.write(folder, two())).isInstanceOf(Problem.class);
        assertThat(Files.readAllBytes(folder.resolve("first"))).isEqualTo(OLD);
        assertThat(folder.toFile().list()).hasSize(2);
    }

    @Test
    void refusesAFileInTheFoldersPlace() throws IOException {
        Path out = Files.write(folder.resolve("out"), OLD);
        assertThatThrownBy(() -> WholeFiles.write(out, two())).hasMessageContaining("problem.output.notAFolder");
        assertThat(Files.readAllBytes(out)).isEqualTo(OLD);
    }

    @Test
    void refusesAMissingFolderAndWritesNoneOfTheFiles() {
        Map<Path, byte[]> files = new LinkedHashMap<>();
        files.put(folder.resolve("here"), NEW);
        files.put(folder.resolve("nowhere").resolve("there"), NEW);
        assertThatThrownBy(() -> WholeFiles.write(files)).hasMessageContaining("problem.output.noFolder");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void refusesADevice() {
        Path device = Path.of("/dev/null");
        org.junit.jupiter.api.Assumptions.assumeTrue(Files.exists(device), "no devices in the file system here");
        assertThatThrownBy(() -> WholeFiles.write(Map.of(device, NEW))).hasMessageContaining("problem.output.notAFile");
    }
}
