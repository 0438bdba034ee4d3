package org.cupwright.app.desk.entry.table;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.entry.typed.WrittenPart;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.FactStore;
import org.cupwright.course.Course;
import org.cupwright.cupchange.Fact;
import org.cupwright.formats.table.CellText;
import org.cupwright.policy.Policy;

/** Entries of one kind as a table, as they count: corrections taken in, withdrawn ones left out. */
public record ExportTable(Session session) {
    /** A line: an entry and its cells. */
    public record Row(Fact fact, List<String> cells) {}

    /**
     * A table.
     *
     * @param header the names of its columns, with units
     * @param rows its lines, in the order in which they happened
     */
    public record Answer(Course course, Policy policy, List<String> header, List<Row> rows) {}

    public Answer of(EntryForm form) {
        return session.read(stores -> {
            Course course = session.course(stores);
            Policy policy = stores.policies().history(course.id()).at(CourseToday.of(course, session.clock()));
            ZoneId zone = course.frame().zone();
            List<Row> rows = new FactsInEffect(stores.facts(), course.id())
                    .ofKinds(Set.of(form.kind()), FactStore.LONG_AGO, FactStore.LONG_HENCE).stream()
                            .map(fact -> new Row(fact, cells(form, fact, zone)))
                            .toList();
            return new Answer(course, policy, EntryColumns.of(form).header(), rows);
        });
    }

    static List<String> cells(EntryForm form, Fact fact, ZoneId zone) {
        List<String> cells = new ArrayList<>(List.of(
                fact.id().toString(),
                WrittenPart.moment(fact.happenedAt(), zone),
                fact.hole().map(CellText::guarded).orElse(""),
                CellText.guarded(fact.person())));
        form.parts().forEach(part -> cells.addAll(PartColumns.of(part).cells(fact.payload(), zone)));
        cells.add(WrittenPart.moment(fact.recordedAtDevice(), zone));
        return cells;
    }
}
