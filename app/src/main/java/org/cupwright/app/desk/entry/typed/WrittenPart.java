package org.cupwright.app.desk.entry.typed;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.formats.table.CsvText;
import org.cupwright.policy.EnumNames;

/**
 * A part's value written so that {@link PartText} reads it again. Places take more than a word and are not among them.
 */
public final class WrittenPart {
    private WrittenPart() {}

    /** @param zone by whose clock moments are written */
    public static String of(Object value, ZoneId zone) {
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        if (value instanceof Number number) {
            return number(number);
        }
        if (value instanceof Instant moment) {
            return moment(moment, zone);
        }
        if (value instanceof List<?> items) {
            return items.isEmpty()
                    ? ""
                    : CsvText.joined(items.stream().map(Object::toString).toList());
        }
        return value instanceof Enum<?> choice ? LogProblems.typed(EnumNames.lowerCamel(choice)) : value.toString();
    }

    /** A moment by the course's clock with its offset, so that it stays one where clocks are put back. */
    public static String moment(Instant moment, ZoneId zone) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(moment.atZone(zone));
    }

    /** A number without exponent, of as many digits as give it back. */
    public static String number(Number number) {
        return new BigDecimal(number.toString()).stripTrailingZeros().toPlainString();
    }
}
