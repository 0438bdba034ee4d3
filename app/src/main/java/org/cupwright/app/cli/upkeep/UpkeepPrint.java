package org.cupwright.app.cli.upkeep;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.UpkeepJson;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.storage.upkeep.BackupDone;
import org.cupwright.app.storage.upkeep.FolderCounts;
import org.cupwright.app.storage.upkeep.FolderReport;
import org.cupwright.app.storage.upkeep.FolderReport.Damage;
import org.cupwright.app.storage.upkeep.RestoreDone;
import org.cupwright.app.texts.Texts;

/** What came of backup, restore and check, as lines and as JSON. */
final class UpkeepPrint {
    private static final double KILOBYTE = 1000;

    private final Task task;
    private final Texts texts;

    UpkeepPrint(Task task) {
        this.task = task;
        this.texts = task.texts();
    }

    void backup(BackupDone done) {
        if (task.options().json()) {
            task.print(Json.document(new UpkeepJson(texts).backup(done)));
            return;
        }
        task.print(texts.say("backup.done", done.file().toString(), size(done.bytes())));
        task.print(holds(done.holds()));
        if (!done.damages().isEmpty()) {
            task.print(texts.say("check.damaged", done.damages().size()));
            done.damages().forEach(this::damage);
        }
    }

    void restore(RestoreDone done) {
        if (task.options().json()) {
            task.print(Json.document(new UpkeepJson(texts).restore(done)));
            return;
        }
        task.print(texts.say("restore.done", done.source().toString()));
        task.print(holds(done.holds()));
        done.before().ifPresent(before -> task.print(texts.say("restore.before", before.toString())));
    }

    void check(FolderReport report) {
        if (task.options().json()) {
            task.print(Json.document(new UpkeepJson(texts).check(report)));
            return;
        }
        if (!report.exists()) {
            task.print(texts.say("check.nothing", report.file().toString()));
            return;
        }
        task.print(texts.say("check.title", report.file().toString(), Integer.toString(report.format())));
        task.print(holds(report.holds()));
        if (!report.journal().isEmpty()) {
            task.print(texts.say("check.journal", report.journal(), report.synchronous()));
        }
        task.print(
                report.sound()
                        ? texts.say("check.sound")
                        : texts.say("check.damaged", report.damages().size()));
        report.damages().forEach(this::damage);
    }

    private void damage(Damage damage) {
        Layout.wrapped("  ", texts.say(damage.what())).forEach(task::print);
        line("where", texts.say(damage.where()));
        line("try", texts.say(damage.tryThis()));
    }

    private void line(String name, String text) {
        String label = Layout.left(texts.say("label." + name), 7);
        task.print("    " + label + text);
    }

    private String holds(FolderCounts counts) {
        List<String> said = new ArrayList<>();
        said.add(texts.say("upkeep.holds", counts.courses(), counts.surveys(), counts.plans(), counts.facts()));
        if (counts.photos() > 0) {
            said.add(texts.say("upkeep.photos", counts.photos()));
        }
        if (counts.photosMissing() > 0) {
            said.add(texts.say("upkeep.photosMissing", counts.photosMissing()));
        }
        return String.join("\n", said);
    }

    private String size(long bytes) {
        double kilobytes = bytes / KILOBYTE;
        return kilobytes < KILOBYTE
                ? texts.number(Math.max(1, kilobytes), 0) + " kB"
                : texts.number(kilobytes / KILOBYTE, 1) + " MB";
    }
}
