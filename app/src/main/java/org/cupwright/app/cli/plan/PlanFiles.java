package org.cupwright.app.cli.plan;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.cupwright.app.answers.files.PlanCalendar;
import org.cupwright.app.answers.files.PlanTable;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.cli.command.Version;
import org.cupwright.app.cli.command.Writing;
import org.cupwright.app.desk.paper.WeeksPaper;
import org.cupwright.formats.table.CsvText;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plans of one or more days as files for other programs, written beside the paper. */
final class PlanFiles {
    @Option(
            names = "--ics",
            paramLabel = "FILE",
            description = "Also writes a calendar, iCalendar, with an event for each day.")
    private Path calendar;

    @Option(
            names = "--csv",
            paramLabel = "FILE",
            description = "Also writes a table, CSV, with a line for each hole of each day.")
    private Path table;

    @Mixin
    private Writing writing;

    boolean asked() {
        return calendar != null || table != null;
    }

    boolean replaces() {
        return writing.replaces();
    }

    /** Whether two of the files are one and the same, or one is a paper of some names. */
    boolean collide(Path folder, List<String> papers) {
        List<Path> all = Stream.concat(
                        Stream.of(calendar, table), papers.stream().map(folder::resolve))
                .filter(Objects::nonNull)
                .map(file -> file.toAbsolutePath().normalize())
                .toList();
        return all.stream().distinct().count() < all.size();
    }

    Map<Path, byte[]> contents(WeeksPaper days, Task task) {
        Map<Path, byte[]> files = new LinkedHashMap<>();
        if (calendar != null) {
            String text = new PlanCalendar(task.texts(), Version.text()).of(days);
            files.put(calendar, text.getBytes(StandardCharsets.UTF_8));
        }
        if (table != null) {
            String text = CsvText.write(new PlanTable(task.texts()).of(days));
            files.put(table, text.getBytes(StandardCharsets.UTF_8));
        }
        return files;
    }
}
