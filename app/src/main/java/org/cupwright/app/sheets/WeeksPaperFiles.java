package org.cupwright.app.sheets;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.cupwright.app.desk.files.WholeFiles;
import org.cupwright.app.desk.paper.WeeksPaper;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.texts.Texts;

/** The paper of several days as a file, with what is written beside it: all are written whole, or none. */
public record WeeksPaperFiles(Texts texts, DataFolder data) {
    public static final String WEEKS = "weeks.pdf";

    /**
     * Asks before the days are looked up whether their paper may be written there.
     *
     * @throws org.cupwright.message.Problem when it may not
     */
    public void check(Path folder) {
        WholeFiles.checkPapers(data, folder, List.of(WEEKS));
    }

    /**
     * Writes the sheet for the wall into a folder, which is made when it is not there.
     *
     * @param beside other files of these days, by names that a person gives
     * @param replace whether they may replace what is there
     * @return the sheet, then the files beside
     * @throws org.cupwright.message.Problem when they cannot be written
     */
    public List<Path> write(WeeksPaper paper, Path folder, Map<Path, byte[]> beside, boolean replace) {
        byte[] sheet = new WeeksSheet(texts).pdf(paper);
        WholeFiles.writePapers(data, folder, Map.of(WEEKS, sheet), beside, replace);
        return Stream.concat(Stream.of(folder.resolve(WEEKS)), beside.keySet().stream())
                .toList();
    }
}
