package org.cupwright.app.desk.entry.table;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.entry.notebook.DayOrder;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.files.FileReading;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.course.Course;
import org.cupwright.cupchange.Fact;
import org.cupwright.formats.table.Layout;
import org.cupwright.formats.table.NotReadLine;
import org.cupwright.formats.table.Reading;
import org.cupwright.formats.table.Table;
import org.cupwright.message.Message;
import org.cupwright.policy.Policy;

/** Takes a table of entries of one kind into the logbook: one that was written from it, or one made by hand. */
public record ImportTable(Session session) {
    /** The word that accepts what looks wrong. */
    public static final String QUESTIONS = "questions";

    /**
     * What reads of a table.
     *
     * @param added how many entries are kept now, or would be
     * @param known lines whose entries are kept already
     * @param kept whether anything was kept: not for a dry run
     * @param facts the entries that are added
     * @param notRead lines that do not read
     * @param unused columns that were not used
     * @param remarks how lines were understood, where they could be understood otherwise
     * @param order in which order day and month stand, where strokes part them
     * @param unended the last line, where the file ends within it
     */
    public record Answer(
            Course course,
            Policy policy,
            int added,
            int known,
            boolean kept,
            List<Fact> facts,
            List<NotReadLine> notRead,
            List<String> unused,
            List<Message> remarks,
            Optional<DayOrder> order,
            Optional<String> unended) {}

    /**
     * Reads a table, and keeps what reads when that is wanted.
     *
     * @param form of the kind of its entries
     * @param said in which order day and month stand where strokes part them; empty to go by the table
     * @param sure whether lines that look wrong are meant
     */
    public Answer read(EntryForm form, SourceFile file, Optional<DayOrder> said, boolean sure, boolean keep) {
        Table table = FileReading.read(file, Table::of);
        EntryColumns columns = EntryColumns.of(form);
        Layout layout = columns.in(table);
        if (!EntryColumns.fit(layout)) {
            throw FileReading.problem(table.without(columns.header()).finding(), file.name());
        }
        Optional<DayOrder> order = DayOrder.of(DayOrder.written(table, layout, columns.days()), said);
        return session.decideIf(keep, Right.RECORD, stores -> {
            Course course = session.course(stores);
            LocalDate today = CourseToday.of(course, session.clock());
            Policy policy = stores.policies().history(course.id()).at(today);
            TableEntry entries =
                    new TableEntry(columns, course, policy, session.person().name(), session.now());
            TableIntake intake = new TableIntake(stores, entries, sure);
            Reading<Fact> reading =
                    table.read(line -> intake.take(DayOrder.plain(line, layout, columns.days(), order), layout));
            if (keep) {
                intake.added().forEach(stores.facts()::add);
            }
            return new Answer(
                    course,
                    policy,
                    intake.added().size(),
                    intake.known(),
                    keep,
                    intake.added(),
                    reading.notRead(),
                    layout.unused(),
                    intake.remarks(),
                    order,
                    reading.unended());
        });
    }

    /** What has to be asked of a person about the order of day and month before the table can be read. */
    public Optional<Message> question(EntryForm form, SourceFile file) {
        EntryColumns columns = EntryColumns.of(form);
        Table table = FileReading.read(file, Table::of);
        return DayOrder.question(DayOrder.written(table, columns.in(table), columns.days()));
    }
}
