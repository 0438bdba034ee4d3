package org.cupwright.formats.items;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.formats.Excerpt;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.PersonsOpinion.Kind;
import org.cupwright.message.Message;

/**
 * What is said of one piece of drawn ground, field by field, in whatever file it stands.
 *
 * @param fields a field's text by its name, empty where it is not there
 */
record DrawnParts(UnaryOperator<String> fields, Message where) {
    /** More ground than any green has is a slip of the pen, m: our choice. */
    private static final double WIDEST_METRES = 50;

    /** What findings of other files are called here, where nothing is passed over. */
    private static final Map<FindingKind, FindingKind> OWN = Map.of(
            FindingKind.SPOT_OFF_GREEN, FindingKind.DRAWN_OFF_GREEN,
            FindingKind.NO_SUCH_PLACE, FindingKind.DRAWN_NO_SUCH_PLACE,
            FindingKind.READING_NOT_READABLE, FindingKind.DRAWN_NOT_A_NUMBER,
            FindingKind.WRONG_SHAPE, FindingKind.DRAWN_SHAPE,
            FindingKind.OUTLINE_CROSSES_ITSELF, FindingKind.DRAWN_CROSSES_ITSELF);

    Optional<String> text(String name) {
        return Optional.of(fields.apply(name).strip()).filter(text -> !text.isEmpty());
    }

    /** @throws UnreadableFile if the kind, the area's number or the day does not read */
    PersonsOpinion word() {
        Kind kind = kind();
        Optional<String> area = kind == Kind.AREA ? Optional.of(area()) : Optional.empty();
        return new PersonsOpinion(kind, text("reason"), text("person"), date("date"), area);
    }

    private String area() {
        String text = text("area").orElse("");
        if (!text.matches(PersonsOpinion.AREA_PATTERN)) {
            throw trouble(FindingKind.DRAWN_AREA, text).failure();
        }
        return text;
    }

    private Kind kind() {
        String text = text("kind").orElse("");
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "good" -> Kind.GOOD;
            case "bad" -> Kind.BAD;
            case "usual" -> Kind.USUAL;
            case "area" -> Kind.AREA;
            default -> throw trouble(FindingKind.DRAWN_KIND_UNKNOWN, text).failure();
        };
    }

    Optional<LocalDate> date(String name) {
        String text = text(name).orElse("");
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException notOne) {
            throw trouble(FindingKind.DATE_NOT_READABLE, text).failure(notOne);
        }
    }

    Optional<String> id() {
        Optional<String> id = text("id");
        if (id.isPresent() && !id.get().matches(DrawnItem.ID_PATTERN)) {
            throw trouble(FindingKind.DRAWN_ID, id.get()).failure();
        }
        return id;
    }

    /** How far about a point the ground is meant, m; a radius in paces stands under {@code radius}. */
    double radiusMetres(double paceMetres, ToNumber numbers) {
        Optional<String> metres = text("radiusMetres");
        Optional<String> paces = text("radius");
        if (metres.isEmpty() && paces.isEmpty()) {
            throw trouble(FindingKind.DRAWN_NEEDS_RADIUS, text("kind").orElse(""))
                    .failure();
        }
        double radius =
                metres.isPresent() ? numbers.number(metres.get()) : paceMetres * numbers.number(paces.orElseThrow());
        if (!(radius > 0 && radius <= WIDEST_METRES)) {
            throw trouble(FindingKind.DRAWN_NOT_A_NUMBER, metres.or(() -> paces).orElseThrow())
                    .failure();
        }
        return radius;
    }

    /** Reads a number, and fails with a finding where there is none. */
    interface ToNumber {
        double number(String text);
    }

    Finding trouble(FindingKind kind, String value) {
        return Finding.of(kind, where, new Message.Name(Excerpt.of(value)));
    }

    /** The same finding in the words of drawn ground. */
    static Finding own(Finding finding) {
        FindingKind kind = OWN.get(finding.kind());
        return kind == null
                ? finding
                : new Finding(
                        kind,
                        finding.place(),
                        finding.where(),
                        finding.value(),
                        finding.details(),
                        Message.of(kind.tryKey()));
    }
}
