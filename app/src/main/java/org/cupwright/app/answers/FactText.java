package org.cupwright.app.answers;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.log.PhoneClock;
import org.cupwright.app.storage.Photo;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Course;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Area;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.CupWork.CutWay;
import org.cupwright.cupchange.CupWork.FoundBy;
import org.cupwright.cupchange.CupWork.Soil;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Payload;
import org.cupwright.policy.EnumNames;
import org.cupwright.policy.Policy;

/** Entries of the logbook in words. */
public final class FactText {
    private static final int ID_SHOWN = 8;
    private static final Set<Object> USUAL = Set.of(FoundBy.PACES, CutWay.ONE_PIECE, Soil.NONE, List.of());
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm");

    private final Texts texts;
    private final PlaceText places;
    private final ZoneId zone;

    public FactText(Texts texts, Course course, Policy policy) {
        this.texts = texts;
        this.places = new PlaceText(texts, course, policy);
        this.zone = course.frame().zone();
    }

    public String moment(Fact fact) {
        return MOMENT.format(fact.happenedAt().atZone(zone));
    }

    /** By the course's clock, on a day that is told beside it. */
    public String time(Fact fact) {
        return TIME.format(fact.happenedAt().atZone(zone));
    }

    /** What the telephone's clock showed and what the office's did, where the two were not at one. */
    public Optional<String> clocks(Fact fact) {
        return PhoneClock.wronglyShown(fact)
                .map(shown -> texts.say("log.clocks", MOMENT.format(shown.atZone(zone)), moment(fact)));
    }

    /** All that was written of one hole, in one sentence: when, what and by whom. */
    public String several(List<Fact> written) {
        return texts.say(
                "log.several", written.size(), written.stream().map(this::timed).collect(Collectors.joining("; ")));
    }

    private String timed(Fact fact) {
        return time(fact) + " " + told(fact)
                + clocks(fact).map(said -> ", " + said).orElse("");
    }

    /** The day on the course, with its weekday. */
    public String day(Fact fact) {
        return texts.day(fact.happenedAt().atZone(zone).toLocalDate());
    }

    public String id(Fact fact) {
        return fact.id().toString().substring(0, ID_SHOWN);
    }

    public String hole(Fact fact) {
        return fact.hole().orElse("–");
    }

    /** What an entry says: its kind, then its parts. */
    public String says(Fact fact) {
        Payload payload = fact.payload();
        List<String> said = new ArrayList<>();
        said.add(texts.say("log.kind." + payload.kind()));
        boolean isCut = payload instanceof CupChanged;
        if (payload instanceof CupChanged changed && changed.planned().equals(Optional.of(changed.cutAt()))) {
            said.add(texts.say("log.asPlanned"));
        }
        EntryForm.ofKind(payload.kind()).parts().stream()
                .filter(part -> !isCut || !part.name().equals("planned"))
                .flatMap(part -> part.of(payload).flatMap(value -> part(fact, part.name(), value)).stream())
                .forEach(said::add);
        return String.join(" · ", said);
    }

    /** The same, and who says so. */
    public String told(Fact fact) {
        return says(fact) + " (" + fact.person() + ")";
    }

    /** A part in words; nothing for what goes without saying. */
    private Optional<String> part(Fact fact, String name, Object value) {
        if (value instanceof Boolean is) {
            String key = (is ? "log.is." : "log.not.") + name;
            return is || texts.knows(key) ? Optional.of(texts.say(key)) : Optional.empty();
        }
        return USUAL.contains(value)
                ? Optional.empty()
                : Optional.of(texts.say("log.part." + name, shown(fact, name, value)));
    }

    private String shown(Fact fact, String name, Object value) {
        if (value instanceof MapPoint point) {
            return place(fact, point);
        }
        if (value instanceof Area.Around area) {
            return texts.say("log.around", texts.length(area.radiusMetres()), place(fact, area.centre()));
        }
        if (value instanceof Area.Drawn area) {
            return texts.say("log.drawn", area.corners().size());
        }
        if (value instanceof List<?> items) {
            return items.stream().map(Object::toString).collect(Collectors.joining(", "));
        }
        if (value instanceof Number some) {
            return texts.number(some.doubleValue());
        }
        return word(name, value);
    }

    private String word(String part, Object value) {
        if (value instanceof LocalDate day) {
            return texts.day(day);
        }
        if (value instanceof Instant moment) {
            return MOMENT.format(moment.atZone(zone));
        }
        if (value instanceof Enum<?> choice) {
            return texts.say("log.choice." + part + "." + EnumNames.lowerCamel(choice));
        }
        if (value instanceof UUID id) {
            return id.toString().substring(0, ID_SHOWN);
        }
        return part.equals(Photo.PART) ? texts.say("log.photo") : value.toString();
    }

    private String place(Fact fact, MapPoint at) {
        return fact.hole().map(hole -> places.at(hole, at)).orElseGet(() -> places.coordinates(at));
    }
}
