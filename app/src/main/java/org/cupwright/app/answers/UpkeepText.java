package org.cupwright.app.answers;

import java.util.List;
import org.cupwright.app.answers.Line.Cell;
import org.cupwright.app.storage.upkeep.BackupDone;
import org.cupwright.app.storage.upkeep.FolderCounts;
import org.cupwright.app.storage.upkeep.FolderReport;
import org.cupwright.app.storage.upkeep.FolderReport.Damage;
import org.cupwright.app.storage.upkeep.RestoreDone;
import org.cupwright.app.texts.Texts;

/** What came of backup, restore and check, in words. */
public record UpkeepText(Texts texts, Lines lines) {
    private static final double KILOBYTE = 1000;

    public UpkeepText(Texts texts) {
        this(texts, new Lines(texts));
    }

    public Lines backup(BackupDone done) {
        lines.say("backup.done", done.file().toString(), size(done.bytes()));
        holds(done.holds());
        if (!done.damages().isEmpty()) {
            lines.say("check.damaged", done.damages().size());
        }
        return damages(done.damages());
    }

    public Lines restore(RestoreDone done) {
        lines.say("restore.done", done.source().toString());
        holds(done.holds());
        done.before().ifPresent(before -> lines.say("restore.before", before.toString()));
        return lines;
    }

    public Lines check(FolderReport report) {
        if (!report.exists()) {
            return lines.say("check.nothing", report.file().toString());
        }
        lines.say("check.title", report.file().toString(), Integer.toString(report.format()));
        holds(report.holds());
        if (!report.journal().isEmpty()) {
            lines.say("check.journal", report.journal(), report.synchronous());
        }
        if (report.sound()) {
            return lines.say("check.sound");
        }
        lines.say("check.damaged", report.damages().size());
        return damages(report.damages());
    }

    private Lines damages(List<Damage> damages) {
        for (Damage damage : damages) {
            lines.wrapped("  ", texts.say(damage.what()));
            line("where", texts.say(damage.where()));
            line("try", texts.say(damage.tryThis()));
        }
        return lines;
    }

    private void line(String name, String text) {
        lines.row(List.of(new Cell("    ", 0), Line.left(texts.say("label." + name), 7)), text);
    }

    private void holds(FolderCounts counts) {
        lines.say("upkeep.holds", counts.courses(), counts.surveys(), counts.plans(), counts.facts());
        if (counts.photos() > 0) {
            lines.say("upkeep.photos", counts.photos());
        }
        if (counts.photosMissing() > 0) {
            lines.say("upkeep.photosMissing", counts.photosMissing());
        }
    }

    private String size(long bytes) {
        double kilobytes = bytes / KILOBYTE;
        return kilobytes < KILOBYTE
                ? texts.number(Math.max(1, kilobytes), 0) + " kB"
                : texts.number(kilobytes / KILOBYTE, 1) + " MB";
    }
}
