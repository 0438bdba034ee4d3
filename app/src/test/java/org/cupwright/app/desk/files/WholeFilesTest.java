package org.cupwright.app.desk.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFilesTest {
    private static final byte[] NEW = "%PDF-1.7 new".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] OLD = "%PDF-1.4 old".getBytes(StandardCharsets.US_ASCII);

    @TempDir
    Path folder;

    @TempDir
    Path elsewhere;

    private static Map<String, byte[]> two() {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("first", NEW);
        files.put("second", NEW);
        return files;
    }

    private SqliteFolder data() {
        return new SqliteFolder(elsewhere, Clock.systemUTC());
    }

    @Test
    void writesIntoAFolderThatIsMade() throws IOException {
        Path out = folder.resolve("a").resolve("b");
        WholeFiles.writePapers(data(), out, two());
        assertThat(out).isDirectoryContaining(file -> file.endsWith("first"));
        assertThat(Files.readAllBytes(out.resolve("second"))).isEqualTo(NEW);
        assertThat(out.toFile().list()).hasSize(2);
    }

    @Test
    void replacesWhatIsThereAndLeavesNothingElse() throws IOException {
        Files.write(folder.resolve("first"), OLD);
        WholeFiles.writePapers(data(), folder, two());
        assertThat(Files.readAllBytes(folder.resolve("first"))).isEqualTo(NEW);
        assertThat(folder.toFile().list()).hasSize(2);
    }

    @Test
    void refusesAFolderInAFilesPlaceAndChangesNothing() throws IOException {
        Files.write(folder.resolve("first"), OLD);
        Files.createDirectory(folder.resolve("second"));
        assertThatThrownBy(() -> WholeFiles.writePapers(data(), folder, two())).isInstanceOf(Problem.class);
        assertThat(Files.readAllBytes(folder.resolve("first"))).isEqualTo(OLD);
        assertThat(folder.toFile().list()).hasSize(2);
    }

    @Test
    void refusesAFileInTheFoldersPlace() throws IOException {
        Path out = Files.write(folder.resolve("out"), OLD);
        assertThatThrownBy(() -> WholeFiles.writePapers(data(), out, two()))
                .hasMessageContaining("problem.output.notAFolder");
        assertThat(Files.readAllBytes(out)).isEqualTo(OLD);
    }

    @Test
    void refusesAMissingFolderAndWritesNoneOfTheFiles() {
        Map<Path, byte[]> files = new LinkedHashMap<>();
        files.put(folder.resolve("here"), NEW);
        files.put(folder.resolve("nowhere").resolve("there"), NEW);
        assertThatThrownBy(() -> WholeFiles.write(data(), files, false))
                .hasMessageContaining("problem.output.noFolder");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void refusesADevice() {
        Path device = Path.of("/dev/null");
        org.junit.jupiter.api.Assumptions.assumeTrue(Files.exists(device), "no devices in the file system here");
        assertThatThrownBy(() -> WholeFiles.write(data(), Map.of(device, NEW), true))
                .hasMessageContaining("problem.output.notAFile");
    }

    @Test
    void replacesOnlyWhereItIsSaid() throws IOException {
        Path file = Files.write(folder.resolve("first"), OLD);
        assertThatThrownBy(() -> WholeFiles.write(data(), Map.of(file, NEW), false))
                .hasMessageContaining("problem.output.exists");
        assertThat(file).hasBinaryContent(OLD);
        WholeFiles.write(data(), Map.of(file, NEW), true);
        assertThat(file).hasBinaryContent(NEW);
    }

    @Test
    void papersReplaceNothingButPapers() throws IOException {
        Path other = Files.writeString(folder.resolve("second"), "mine");
        assertThatThrownBy(() -> WholeFiles.writePapers(data(), folder, two()))
                .hasMessageContaining("problem.output.noPaper");
        assertThat(other).hasContent("mine");
        assertThat(folder.toFile().list()).hasSize(1);
    }

    @Test
    void writesNothingAmongTheDataByWhateverWay() throws IOException {
        Path kept = Files.write(elsewhere.resolve("cupwright.db"), OLD);
        Path link = Files.createSymbolicLink(folder.resolve("link"), elsewhere);
        Path same = Files.createLink(folder.resolve("same"), kept);
        for (Path path : List.of(kept, link.resolve("cupwright.db"), link.resolve("new"), same, elsewhere)) {
            assertThatThrownBy(() -> WholeFiles.write(data(), Map.of(path, NEW), true))
                    .as(path.toString())
                    .hasMessageContaining("problem.output.amongData");
        }
        assertThatThrownBy(() -> WholeFiles.writePapers(data(), link.resolve("paper"), two()))
                .hasMessageContaining("problem.output.amongData");
        assertThat(kept).hasBinaryContent(OLD);
        assertThat(elsewhere.toFile().list()).hasSize(1);
    }
}
