package org.cupwright.app.desk.weather;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.desk.CourseLatitude;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.files.FileReading;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.FactStore;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.cupchange.Fact;
import org.cupwright.formats.table.FarDays;
import org.cupwright.formats.table.NotReadLine;
import org.cupwright.formats.table.Question;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.turf.weather.RecordedWeather;

/**
 * Takes weather into the logbook from a table, one line a day: that of past days, or a forecast of coming ones. The
 * same table taken in twice adds nothing. A table that looks wrong as a whole is not kept until a person says that it
 * is right.
 */
public record ImportWeather(Session session) {
    /**
     * What is wanted.
     *
     * @param file the table
     * @param forecast whether it foretells coming days
     * @param columns by the column's name: what the table calls it, where it is none of the usual names
     * @param units by the column's name: its unit, where the table does not say
     * @param accepted what looks wrong and is right ({@link Question#about()}, {@link FarDays#ABOUT})
     * @param keep whether to keep what reads
     */
    public record Request(
            SourceFile file,
            boolean forecast,
            Map<String, String> columns,
            Map<String, String> units,
            Set<String> accepted,
            boolean keep) {}

    /**
     * What reads of a table.
     *
     * @param forecast whether it foretells coming days
     * @param units by the column's name: the unit in which the column was read
     * @param read days that read
     * @param first the first of them
     * @param last the last
     * @param missing days between those two of which the table says nothing that reads; the turf's clocks fill them,
     *     and count that
     * @param noRain days that read without their rain, which counts as unknown
     * @param added days that are new to the logbook
     * @param changed days that are in it with other values, which the table's replace
     * @param known days that are in it with the same values
     * @param notRead lines that do not read
     * @param asks what looks wrong of the whole, and has not been accepted
     * @param unended the last line, where the file ends within it
     * @param kept whether anything was kept: not for a dry run
     */
    public record Answer(
            Course course,
            boolean forecast,
            Map<String, String> units,
            int read,
            Optional<LocalDate> first,
            Optional<LocalDate> last,
            long missing,
            int noRain,
            int added,
            int changed,
            int known,
            List<NotReadLine> notRead,
            List<Question> asks,
            Optional<String> unended,
            boolean kept) {}

    /**
     * Reads a table, and keeps what reads when that is wanted.
     *
     * @throws Problem when it is to be kept, looks wrong, and nobody said that it is right
     */
    public Answer read(Request request) {
        WeatherQuestions.checkAccepted(request.accepted());
        WeatherEntries entries = session.read(stores -> entries(stores, request));
        WeatherTable table = FileReading.read(request.file(), in -> WeatherTable.read(in, request, entries));
        List<Question> asks = table.questions(CourseLatitude.degrees(entries.course())).stream()
                .filter(question -> !request.accepted().contains(question.about()))
                .toList();
        if (request.keep() && !asks.isEmpty()) {
            throw asked(asks.get(0), request.file());
        }
        return session.decideIf(request.keep(), Right.RECORD, stores -> {
            WeatherEntries known = entries(stores, request);
            List<WeatherEntries.News> news = table.days().stream()
                    .flatMap(weather -> known.news(weather, session.person().name(), session.now()).stream())
                    .toList();
            if (request.keep()) {
                news.forEach(each -> stores.facts().add(each.fact()));
            }
            return answer(request, known, table, news, asks);
        });
    }

    private WeatherEntries entries(Stores stores, Request request) {
        Course course = session.course(stores);
        List<Fact> all =
                stores.facts().ofKinds(course.id(), RecordedWeather.KINDS, FactStore.LONG_AGO, FactStore.LONG_HENCE);
        LocalDate today = CourseToday.of(course, session.clock());
        return request.forecast() ? new ComingWeather(course, all, today) : new PastWeather(course, all, today);
    }

    private static Answer answer(
            Request request,
            WeatherEntries entries,
            WeatherTable table,
            List<WeatherEntries.News> news,
            List<Question> asks) {
        int changed = (int) news.stream().filter(WeatherEntries.News::instead).count();
        int read = table.days().size();
        return new Answer(
                entries.course(),
                request.forecast(),
                table.layout().unitNames(),
                read,
                table.first(),
                table.last(),
                table.missing(),
                table.withoutRain(),
                news.size() - changed,
                changed,
                read - news.size(),
                table.reading().notRead(),
                asks,
                table.reading().unended(),
                request.keep());
    }

    private static Problem asked(Question question, SourceFile file) {
        return Problem.of(
                question.asks(),
                Message.of("where.place", new Name(file.name())),
                question.about(),
                question.tryThis());
    }
}
