package org.cupwright.app.desk.begin;

import java.text.Normalizer;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cupwright.app.desk.policy.ChangePolicy;
import org.cupwright.app.desk.policy.ChangePolicy.Wanted;
import org.cupwright.app.desk.policy.DeskPolicy;
import org.cupwright.app.desk.policy.PolicyEntry;
import org.cupwright.app.desk.policy.Settings;
import org.cupwright.app.desk.policy.ShowPolicy;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.SettingUp.BegunGreen;
import org.cupwright.app.storage.SettingUp.Place;
import org.cupwright.course.Course;
import org.cupwright.course.MapPoint;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.FrameForMeasuring;
import org.cupwright.message.Problem;
import org.cupwright.policy.PolicyCatalogue;
import org.cupwright.policy.Setting;

/** First step: what the course is called, where it lies, and in which words and units it speaks. */
public record PlaceStep(Session session) {
    public static final String NAME = "name";
    public static final String ID = "id";
    public static final String ZONE = "zone";
    public static final String LONGITUDE = "longitude";
    public static final String LATITUDE = "latitude";

    /** Settings that are asked for here, each by its key. */
    public static final List<Setting<?>> SETTINGS = List.of(DeskPolicy.LANGUAGE, DeskPolicy.UNITS);

    private static final int LONGEST_NAME = 80;
    private static final int LONGEST_ID = 40;

    /** Between these latitudes the frames that courses get are made (UTM). */
    private static final double SOUTHERNMOST = -80;

    private static final double NORTHERNMOST = 84;

    /**
     * Keeps what was typed.
     *
     * @throws WrongFields if anything of it is wrong
     */
    public void keep(Map<String, String> typed) {
        TypedFields fields = new TypedFields(typed);
        String name = name(fields);
        String id = id(fields, name);
        Optional<ZoneId> zone = zone(fields);
        Optional<Double> longitude = fields.number(LONGITUDE, -180, 180);
        Optional<Double> latitude = fields.number(LATITUDE, SOUTHERNMOST, NORTHERNMOST);
        ChangePolicy change = new ChangePolicy(BeginCourse.ofNoCourse(session), Settings.catalogue());
        List<Wanted> wanted = wanted(fields, change);
        fields.check();
        session.decide(Right.SURVEY, stores -> {
            BeginCourse.refuseBesideACourse(stores);
            Optional<SettingUp> before = stores.setUp().find();
            List<BegunGreen> greens = before.map(SettingUp::greens).orElse(List.of());
            int epsg = frame(fields, longitude.get(), latitude.get(), before);
            Place place = new Place(id, name, zone.get(), longitude.get(), latitude.get(), epsg);
            refuseFarFrom(greens, place, fields);
            fields.check();
            stores.setUp().add(before.map(stands -> stands.withPlace(place)).orElseGet(() -> SettingUp.at(place)));
            LocalDate from = LocalDate.now(session.clock().withZone(place.zone()));
            change.setIn(stores, from, wanted);
            return place;
        });
    }

    private static String name(TypedFields fields) {
        String name = fields.text(NAME);
        if (name.isEmpty()) {
            fields.refuse(NAME, Problem.of("begin.missing", NAME, name));
        } else if (name.length() > LONGEST_NAME || name.codePoints().anyMatch(Character::isISOControl)) {
            fields.refuse(NAME, Problem.of("begin.name", NAME, name));
        }
        return name;
    }

    /** The name in small letters and hyphens where no short one is given. */
    private static String id(TypedFields fields, String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-", "");
        String made = plain.substring(0, Math.min(LONGEST_ID, plain.length())).replaceAll("-$", "");
        String id = fields.isBlank(ID) ? made : fields.text(ID);
        if (!id.matches(Course.ID_PATTERN) && !(id.isEmpty() && name.isEmpty())) {
            fields.refuse(ID, Problem.of("begin.id", ID, id));
        }
        return id;
    }

    private static Optional<ZoneId> zone(TypedFields fields) {
        String text = fields.text(ZONE);
        try {
            return Optional.of(ZoneId.of(text));
        } catch (DateTimeException unknown) {
            fields.refuse(ZONE, Problem.of("begin.zone", ZONE, text));
            return Optional.empty();
        }
    }

    /** Settings that are to be otherwise than they are, of those who may set any. */
    private List<Wanted> wanted(TypedFields fields, ChangePolicy change) {
        List<Wanted> wanted = new ArrayList<>();
        if (session.person().role().may(Right.SET)) {
            for (Setting<?> setting : SETTINGS) {
                FirstSettings.read(fields, setting.key(), setting.key(), change).ifPresent(wanted::add);
            }
        }
        Map<String, String> inForce = inForce();
        wanted.removeIf(value -> value.value().equals(inForce.get(value.key())));
        return wanted;
    }

    private Map<String, String> inForce() {
        PolicyCatalogue catalogue = Settings.catalogue();
        ShowPolicy show = new ShowPolicy(BeginCourse.ofNoCourse(session), catalogue);
        LocalDate today = LocalDate.now(session.clock());
        List<PolicyEntry> entries =
                SETTINGS.stream().map(setting -> show.one(today, setting.key())).toList();
        return entries.stream()
                .collect(Collectors.toMap(entry -> entry.setting().key(), PolicyEntry::value));
    }

    /** The UTM zone of the place; greens that are there keep theirs as long as it measures truly. */
    private static int frame(TypedFields fields, double longitude, double latitude, Optional<SettingUp> before) {
        int own = CoordinateFrame.utmOf(longitude, latitude).epsg();
        Optional<SettingUp> standing = before.filter(stands -> !stands.greens().isEmpty());
        if (standing.isEmpty() || standing.get().place().epsg() == own) {
            return own;
        }
        int kept = standing.get().place().epsg();
        if (!FrameForMeasuring.fits(CoordinateFrame.of(kept), longitude, latitude)) {
            fields.refuse(LONGITUDE, Problem.of("begin.greensElsewhere", LONGITUDE, fields.text(LONGITUDE)));
        }
        return kept;
    }

    private static void refuseFarFrom(List<BegunGreen> greens, Place place, TypedFields fields) {
        MapPoint at = TypedPlace.of(place);
        boolean far = greens.stream()
                .filter(BegunGreen::placed)
                .anyMatch(green -> green.hole().green().centroid().distanceMetres(at) > TypedPlace.FARTHEST_METRES);
        if (far) {
            fields.refuse(LONGITUDE, Problem.of("begin.greensElsewhere", LONGITUDE, fields.text(LONGITUDE)));
        }
    }
}
