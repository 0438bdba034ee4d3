package org.cupwright.cupchange;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.UUID;
import java.util.random.RandomGenerator;
import org.cupwright.course.MapPoint;

/** Invented facts of an invented course: single ones for unit tests, seeded sequences for random ones. */
public final class MadeFacts {
    public static final String COURSE = "made-up";
    public static final Instant START = Instant.parse("2024-02-20T05:00:00Z");

    private MadeFacts() {}

    public static Fact fact(UUID id, Instant when, Optional<String> hole, Payload payload) {
        return new Fact(
                id,
                Fact.CURRENT_VERSION,
                when,
                when.plusSeconds(60),
                Optional.empty(),
                "invented person",
                COURSE,
                hole,
                payload);
    }

    /** A fact of a green, or of the whole course when {@code hole} is empty; its id follows from the other three. */
    public static Fact on(String when, String hole, Payload payload) {
        UUID id = UUID.nameUUIDFromBytes((when + hole + payload).getBytes(java.nio.charset.StandardCharsets.UTF_8));
        return fact(id, Instant.parse(when), hole.isEmpty() ? Optional.empty() : Optional.of(hole), payload);
    }

    public static CupWork.CupChanged cut(double east, double north) {
        return CupWork.CupChanged.asPlanned(new MapPoint(east, north));
    }

    /** So many facts over some months, on three greens, without corrections. */
    public static List<Fact> sequence(RandomGenerator random, int count) {
        List<Fact> facts = new ArrayList<>();
        Instant when = START;
        for (int i = 0; i < count; i++) {
            when = when.plus(Duration.ofMinutes(random.nextInt(1, 1500)));
            facts.add(recorded(random, when));
        }
        return facts;
    }

    /** One fact of a random kind. */
    public static Fact recorded(RandomGenerator random, Instant when) {
        Payload payload = payload(random, LocalDate.ofInstant(when, ZoneOffset.UTC));
        boolean ofGreen = payload.needsHole() || random.nextInt(3) == 0;
        Optional<String> hole = ofGreen ? Optional.of("" + random.nextInt(1, 4)) : Optional.empty();
        return new Fact(
                id(random),
                Fact.CURRENT_VERSION,
                when,
                when.plusSeconds(random.nextInt(0, 4000)),
                Optional.empty(),
                "invented person",
                COURSE,
                hole,
                payload);
    }

    public static UUID id(RandomGenerator random) {
        return new UUID(random.nextLong(), random.nextLong());
    }

    public static Payload payload(RandomGenerator random, LocalDate day) {
        return switch (random.nextInt(14)) {
            case 0, 1, 2, 3 -> changed(random);
            case 4 -> new PlugWork.PlugSeen(place(random), pick(random, PlugWork.PlugLook.values()));
            case 5 ->
                new PlugWork.PlugTended(place(random), pick(random, PlugWork.PlugCare.values()), Optional.empty());
            case 6 -> marked(random, day);
            case 7 -> new CareWork.Maintained(pick(random, CareWork.Upkeep.values()));
            case 8 -> new CareWork.Irrigated(random.nextInt(0, 6));
            case 9 -> new DayReading.RoundsPlayed(day, random.nextInt(0, 200));
            case 10 -> new DayReading.SpeedRead(random.nextDouble(8, 12), OptionalDouble.empty());
            case 11 -> weather(random, day);
            case 12 -> random.nextBoolean() ? cutterNote(random) : seldom(random, day);
            default -> rare(random, day);
        };
    }

    private static CupWork.CupChanged changed(RandomGenerator random) {
        return CupWork.CupChanged.asPlanned(place(random))
                .with("cutter " + random.nextInt(2), pick(random, CupWork.Soil.values()), random.nextInt(9) == 0);
    }

    private static Payload marked(RandomGenerator random, LocalDate day) {
        GroundNote.GroundUse use = pick(random, GroundNote.GroundUse.values());
        boolean ends = use != GroundNote.GroundUse.FREE && random.nextBoolean();
        return new GroundNote.GroundMarked(
                use,
                new Area.Around(place(random), random.nextDouble(0.5, 3)),
                pick(random, GroundNote.GroundReason.values()),
                day,
                ends ? Optional.of(day.plusDays(random.nextInt(0, 20))) : Optional.empty());
    }

    private static Payload weather(RandomGenerator random, LocalDate day) {
        double lowest = random.nextDouble(-5, 20);
        DayReading.WeatherEntered entered = new DayReading.WeatherEntered(
                day,
                lowest + random.nextDouble(0, 15),
                lowest,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                OptionalDouble.of(12.25),
                OptionalDouble.of(lowest),
                OptionalDouble.of(random.nextInt(0, 4)),
                false);
        return random.nextInt(4) == 0 ? DayReading.WeatherForecast.of(entered) : entered;
    }

    private static Payload cutterNote(RandomGenerator random) {
        String cutter = "cutter " + random.nextInt(2);
        return random.nextBoolean()
                ? new CrewNote.ToolSharpened(cutter)
                : new CrewNote.StopSet(cutter, random.nextInt(120, 130));
    }

    private static Payload rare(RandomGenerator random, LocalDate day) {
        return switch (random.nextInt(7)) {
            case 0 -> new GroundNote.TemporaryGreen(random.nextBoolean());
            case 1 -> new GroundNote.Frost(random.nextBoolean());
            case 2 -> new CupWork.HoleMovedInPlay(place(random), "invented official", 3, "spike marks");
            case 3 -> new PlugWork.PlugSet(place(random), PlugWork.PlugFrom.NURSERY, random.nextBoolean());
            case 4 ->
                new CupWork.SpotCheck(
                        OptionalDouble.of(random.nextInt(95, 130)), OptionalDouble.of(26), OptionalDouble.empty());
            case 5 -> new CupWork.DotPainted(place(random), day.plusDays(1));
            default -> new CrewNote.NoteToNext("invented note");
        };
    }

    private static Payload seldom(RandomGenerator random, LocalDate day) {
        return switch (random.nextInt(9)) {
            case 0 ->
                day.getDayOfMonth() % 2 == 0
                        ? new CupWork.LeftInOldHole(Optional.of("invented reason"))
                        : somewhere(day);
            case 1 -> new CupWork.RolledByHand(place(random), random.nextBoolean());
            case 2 -> new PlugWork.BallMark(place(random));
            case 3 -> new PlugWork.BallMarksMended(random.nextInt(0, 30));
            case 4 -> new CareWork.Sprayed("invented product", day.atTime(14, 0).toInstant(ZoneOffset.UTC));
            case 5 -> new CrewNote.ToolsChecked(List.of("invented tool"));
            case 6 -> new CrewNote.LearnerSignedOff("invented learner", "plugs");
            case 7 -> new CrewNote.OddSeen(new UUID(random.nextLong(), random.nextLong()));
            default ->
                new CrewNote.SomethingOdd(
                        pick(random, CrewNote.Severity.values()),
                        "invented trouble",
                        random.nextBoolean() ? Optional.empty() : Optional.of("0123456789abcdef".repeat(4)));
        };
    }

    private static CupWork.CutSomewhere somewhere(LocalDate day) {
        CupWork.Depth depth = CupWork.Depth.values()[day.getDayOfMonth() % 3];
        return day.getDayOfMonth() % 5 == 0
                ? new CupWork.CutSomewhere(depth, Optional.empty())
                : new CupWork.CutSomewhere(depth, Optional.of(CupWork.Across.values()[day.getMonthValue() % 3]));
    }

    /** On a coarse grid, so that places meet. */
    private static MapPoint place(RandomGenerator random) {
        return new MapPoint(random.nextInt(0, 20), random.nextInt(0, 25));
    }

    private static <T> T pick(RandomGenerator random, T[] from) {
        return from[random.nextInt(from.length)];
    }
}
