package org.cupwright.app.sheets;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.cupwright.app.desk.files.WholeFiles;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.texts.Texts;

/** The paper of a day as files, with what is written beside it: all are written whole, or none. */
public record DayPaperFiles(Texts texts, DataFolder data) {
    public static final String SHEET = "hole-locations.pdf";
    public static final String CARD = "changers-card.pdf";

    /**
     * Asks before the day is decided whether its papers may be written there.
     *
     * @throws org.cupwright.message.Problem when they may not
     */
    public void check(Path folder) {
        WholeFiles.checkPapers(data, folder, List.of(SHEET, CARD));
    }

    /**
     * Writes the hole location sheet and the changer's card into a folder, which is made when it is not there.
     *
     * @return the files, the sheet first
     * @throws org.cupwright.message.Problem when they cannot be written
     */
    public List<Path> write(DayPaper paper, Path folder) {
        return write(paper, folder, Map.of(), false);
    }

    /**
     * The same with other files of the day.
     *
     * @param beside those files, by names that a person gives
     * @param replace whether they may replace what is there
     * @return the papers, then the files beside
     */
    public List<Path> write(DayPaper paper, Path folder, Map<Path, byte[]> beside, boolean replace) {
        DaySheet day = DaySheet.of(paper, texts);
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(SHEET, new HoleLocationSheet(texts).pdf(day));
        files.put(CARD, new ChangersCard(texts).pdf(day));
        WholeFiles.writePapers(data, folder, files, beside, replace);
        return Stream.concat(files.keySet().stream().map(folder::resolve), beside.keySet().stream())
                .toList();
    }
}
