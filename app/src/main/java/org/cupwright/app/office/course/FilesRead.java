package org.cupwright.app.office.course;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.cupwright.app.answers.FindingText;
import org.cupwright.app.answers.Line;
import org.cupwright.app.answers.Lines;
import org.cupwright.app.answers.TakenInText;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.entry.notebook.DayOrder;
import org.cupwright.app.desk.entry.notebook.ImportHistory;
import org.cupwright.app.desk.intake.ImportCourse;
import org.cupwright.app.desk.intake.ImportRequest;
import org.cupwright.app.desk.intake.ImportRequest.SurveyOptions;
import org.cupwright.app.desk.intake.ImportResult;
import org.cupwright.app.desk.weather.ImportWeather;
import org.cupwright.app.session.Session;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.cupwright.formats.table.Question;
import org.cupwright.green.SurveyKind;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.policy.EnumNames;
import org.cupwright.units.LengthUnit;

/**
 * Reads files that were handed in as the commands do: first to look, then to bring them in.
 *
 * @param session who brings them, to which course
 * @param texts in whose words it is told
 * @param today today on the course
 * @param progress is told how far it has come
 */
record FilesRead(Session session, Texts texts, LocalDate today, Progress progress) {
    /** What looks wrong and may be right: days far from all others. */
    private static final String FAR_DAYS = "days";

    /** While the page waits. */
    static FilesRead during(Visit visit) {
        return new FilesRead(visit.session(), visit.texts(), visit.today(), Progress.unheard());
    }

    /**
     * What was read.
     *
     * @param said in the words of the commands
     * @param asks what has to be answered before they are brought in
     * @param brings whether there is anything to bring in, as far as looking tells
     * @param onGround what is doubtful, drawn where it is
     */
    record Read(Lines said, List<Asked> asks, boolean brings, List<FindingsOnGround.OnGreen> onGround) {
        public List<Told> lines() {
            return Told.all(said);
        }
    }

    /** A line: what stands in columns, and what is said. */
    record Told(String head, String text) {
        /** What is said, without what is blank. */
        static List<Told> all(Lines said) {
            return said.all().stream()
                    .map(Told::of)
                    .filter(told -> !told.text().isBlank())
                    .toList();
        }

        private static Told of(Line line) {
            String head = line.cells().stream()
                    .map(cell -> cell.text().strip())
                    .filter(text -> !text.isEmpty())
                    .collect(Collectors.joining(" · "));
            return new Told(head, String.join(" ", line.said()).strip());
        }
    }

    /** Something that looks wrong, by the name under which it is said to be right. */
    record Asked(String about, String says) {}

    /**
     * Reads a parcel.
     *
     * @param accepted what looks wrong and is right
     * @param keep whether it is brought in, or only looked at
     */
    Read of(Parcel parcel, Set<String> accepted, boolean keep) {
        return switch (parcel.what()) {
            case GROUND -> ground(parcel, keep);
            case WEATHER -> weather(parcel, accepted, keep);
            case HISTORY -> history(parcel, keep);
        };
    }

    private Read ground(Parcel parcel, boolean keep) {
        ImportRequest request = new ImportRequest(
                parcel.find("courseId").or(() -> session.course().id()).orElse(""),
                session.clock().getZone(),
                parcel.one("outlines"),
                Map.of(),
                parcel.all("elevation"),
                parcel.one("levels"),
                parcel.one("drawn"),
                options(parcel),
                !keep);
        if (parcel.files().values().stream().allMatch(List::isEmpty)) {
            throw Problem.of("files.none", "request", "");
        }
        ImportResult result = new ImportCourse(session, today).run(request, progress);
        return new Read(
                new FindingText(texts).imported(result),
                List.of(),
                true,
                new FindingsOnGround(texts).of(result.course(), result.findings()));
    }

    private static SurveyOptions options(Parcel parcel) {
        return new SurveyOptions(
                parcel.find("crs").map(FilesRead::epsg).orElseGet(OptionalInt::empty),
                parcel.find("unit").flatMap(FilesRead::unit),
                Set.of(),
                parcel.find("columns"),
                parcel.find("kind").flatMap(kind -> EnumNames.find(SurveyKind.class, kind)),
                parcel.find("unchanged").isPresent());
    }

    private static OptionalInt epsg(String text) {
        if (!text.matches("(?i)(EPSG:)?[0-9]{4,6}")) {
            throw Problem.of("files.crs", "crs", text, new Name(text));
        }
        return OptionalInt.of(Integer.parseInt(text.replaceFirst("(?i)EPSG:", "")));
    }

    private static Optional<LengthUnit> unit(String text) {
        return List.of(LengthUnit.values()).stream()
                .filter(unit -> unit.symbol().equals(text))
                .findFirst();
    }

    private Read weather(Parcel parcel, Set<String> accepted, boolean keep) {
        boolean forecast = parcel.find("forecast").isPresent();
        ImportWeather.Request request = new ImportWeather.Request(
                parcel.one("file").orElseThrow(() -> Problem.of("files.none", "request", "")),
                forecast,
                pairs(parcel, "columns"),
                pairs(parcel, "units"),
                accepted,
                keep);
        ImportWeather.Answer answer =
                new ImportWeather(session.by(forecast ? "forecast" : "weather table")).read(request);
        boolean brings = answer.added() + answer.changed() > 0 || !answer.asks().isEmpty();
        return read(new TakenInText(texts).weather(answer), answer.asks(), brings);
    }

    /** {@code tmax=Hi, rain=Rain}. */
    private static Map<String, String> pairs(Parcel parcel, String field) {
        Map<String, String> pairs = new LinkedHashMap<>();
        for (String pair : parcel.text(field).split("[,;]")) {
            if (!pair.isBlank()) {
                String[] parts = pair.split("=", 2);
                if (parts.length < 2) {
                    throw Problem.of("files.pairs", "request", pair, new Name(pair.strip()));
                }
                pairs.put(parts[0].strip(), parts[1].strip());
            }
        }
        return pairs;
    }

    private Read history(Parcel parcel, boolean keep) {
        ImportHistory.Answer answer = new ImportHistory(session.by("notebook"))
                .read(
                        parcel.one("file").orElseThrow(() -> Problem.of("files.none", "request", "")),
                        parcel.find("order").flatMap(order -> EnumNames.find(DayOrder.class, order)),
                        parcel.find(FAR_DAYS).isPresent(),
                        keep);
        return read(new TakenInText(texts).notebook(answer), List.of(), answer.read() > 0);
    }

    private Read read(Lines lines, List<Question> asks, boolean brings) {
        return new Read(
                lines,
                asks.stream()
                        .map(ask -> new Asked(ask.about(), texts.say(ask.asks()) + " " + texts.say(ask.tryThis())))
                        .toList(),
                brings,
                List.of());
    }
}
