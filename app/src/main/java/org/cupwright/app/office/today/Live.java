package org.cupwright.app.office.today;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.cupwright.app.storage.Versions;
import org.cupwright.app.storage.Versions.Part;
import org.cupwright.app.visit.Visit;

/**
 * How a page of today that stands open asks what others did.
 *
 * @param isToday whether the page is today's; others stay as they are
 * @param plan the number of the day's plan; 0 where there is none
 * @param round the number of what was said of the day's round; 0 where nothing was
 * @param as how far everything that the page shows has come, as it stands in the page
 */
record Live(boolean isToday, long plan, long round, String as) {
    static Live of(Visit visit) {
        Versions versions = visit.session()
                .read(stores -> stores.versions(visit.session().course(stores).id(), visit.date()));
        String as = Arrays.stream(Part.values())
                .map(part -> Long.toString(versions.of(part)))
                .collect(Collectors.joining("-"));
        return new Live(visit.date().equals(visit.today()), versions.of(Part.PLAN), versions.of(Part.ROUND), as);
    }
}
