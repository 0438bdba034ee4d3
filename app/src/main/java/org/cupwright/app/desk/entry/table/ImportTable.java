package org.cupwright.app.desk.entry.table;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.entry.EntryForm;
import org.cupwright.app.desk.files.FileReading;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.cupchange.Fact;
import org.cupwright.formats.table.NotReadLine;
import org.cupwright.formats.table.Reading;
import org.cupwright.formats.table.Table;
import org.cupwright.message.Message;
import org.cupwright.policy.Policy;

/** Takes a table of entries of one kind into the logbook: one that was written from it, or one made by hand. */
public final class ImportTable {
    /** The word that accepts what looks wrong. */
    public static final String QUESTIONS = "questions";

    private final Session session;

    public ImportTable(Session session) {
        this.session = session;
    }

    /**
     * What is to be read.
     *
     * @param kind the kind of the entries
     * @param sure whether lines that look wrong are meant
     * @param keep whether what reads is kept
     */
    public record Wanted(String kind, boolean sure, boolean keep) {}

    /**
     * What reads of a table.
     *
     * @param added entries that are kept now, or would be
     * @param known lines whose entries are kept already
     * @param notRead lines that do not read
     * @param unused columns that were not used
     * @param remarks how lines were understood, where they could be understood otherwise
     * @param unended the last line, where the file ends within it
     * @param kept whether anything was kept: not for a dry run
     */
    public record Answer(
            Course course,
            Policy policy,
            List<Fact> added,
            int known,
            List<NotReadLine> notRead,
            List<String> unused,
            List<Message> remarks,
            Optional<String> unended,
            boolean kept) {}

    public Answer read(Wanted wanted, SourceFile file) {
        EntryForm form = EntryForm.of(wanted.kind());
        Table table = FileReading.read(file, Table::of);
        TableColumns columns = new TableColumns(form, table.header().fields());
        if (!columns.fit()) {
            throw FileReading.problem(table.without(TableColumns.header(form)).finding(), file.name());
        }
        return session.decideIf(wanted.keep(), Right.RECORD, stores -> {
            Answer answer = answer(stores, wanted, table, form, columns);
            if (wanted.keep()) {
                answer.added().forEach(stores.facts()::add);
            }
            return answer;
        });
    }

    private Answer answer(Stores stores, Wanted wanted, Table table, EntryForm form, TableColumns columns) {
        Course course = session.course(stores);
        LocalDate today = CourseToday.of(course, session.clock());
        Policy policy = stores.policies().history(course.id()).at(today);
        TableEntry entries =
                new TableEntry(form, columns, course, policy, session.person().name(), session.now());
        TableIntake intake = new TableIntake(stores, course, entries, wanted);
        Reading<Fact> reading = table.read(intake::take);
        return intake.answer(policy, reading, columns.unused(), wanted.keep());
    }
}
