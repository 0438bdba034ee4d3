package org.cupwright.app.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.desk.entry.carried.TakeRound;
import org.cupwright.app.desk.entry.notebook.DayOrder;
import org.cupwright.app.desk.entry.notebook.ImportHistory;
import org.cupwright.app.desk.entry.table.ImportTable;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.log.FactLines;
import org.cupwright.app.desk.weather.ImportWeather;
import org.cupwright.app.storage.json.FactJson;
import org.cupwright.cupchange.Fact;
import org.cupwright.message.Problem;

/** What becomes entries: tables, notebooks, weather, and the logbook's own file. */
final class EntryReading {
    private static final List<EntryForm> FORMS = EntryForm.all();

    private EntryReading() {}

    /** A table of the kind that its first comment names, {@code # kind=cupChanged}, else of any. */
    static void table(ReadingDesk desk, byte[] bytes) {
        ImportTable table = new ImportTable(desk.session());
        EntryForm form = form(bytes);
        Optional<DayOrder> order = order(bytes);
        table.question(form, ReadingDesk.file(bytes)).ifPresent(desk.words()::check);
        ImportTable.Answer answer = table.read(form, ReadingDesk.file(bytes), order, false, false);
        desk.words().check(answer.notRead());
        answer.remarks().forEach(desk.words()::check);
        answer.facts().forEach(EntryReading::isKept);
    }

    private static EntryForm form(byte[] bytes) {
        String start = new String(bytes, 0, Math.min(80, bytes.length), StandardCharsets.ISO_8859_1);
        return FORMS.stream()
                .filter(form -> start.startsWith("# kind=" + form.kind() + "\n"))
                .findFirst()
                .orElseGet(() -> FORMS.get(Math.floorMod(Arrays.hashCode(bytes), FORMS.size())));
    }

    private static Optional<DayOrder> order(byte[] bytes) {
        List<Optional<DayOrder>> orders =
                List.of(Optional.empty(), Optional.of(DayOrder.DAY_FIRST), Optional.of(DayOrder.MONTH_FIRST));
        return orders.get(bytes.length % orders.size());
    }

    private static void isKept(Fact fact) {
        assertThat(FactJson.read(FactJson.write(fact))).isEqualTo(fact);
    }

    static void notebook(ReadingDesk desk, byte[] bytes) {
        ImportHistory history = new ImportHistory(desk.session());
        history.question(ReadingDesk.file(bytes)).ifPresent(desk.words()::check);
        desk.words()
                .check(history.read(ReadingDesk.file(bytes), order(bytes), false, false)
                        .notRead());
    }

    static void weather(ReadingDesk desk, byte[] bytes) {
        Optional<Problem> refused = Optional.empty();
        for (boolean forecast : new boolean[] {true, false}) {
            try {
                weather(desk, bytes, forecast);
            } catch (Problem why) {
                desk.words().check(why);
                refused = Optional.of(why);
            }
        }
        if (refused.isPresent()) {
            throw refused.get();
        }
    }

    private static void weather(ReadingDesk desk, byte[] bytes, boolean forecast) {
        ImportWeather.Answer answer = new ImportWeather(desk.session())
                .read(new ImportWeather.Request(
                        ReadingDesk.file(bytes), forecast, Map.of(), Map.of(), Set.of(), false));
        desk.words().check(answer.notRead());
        answer.asks().forEach(question -> {
            desk.words().check(question.asks());
            desk.words().check(question.tryThis());
        });
    }

    /** The logbook's own file; what reads says the same when it is written and read again. */
    static void lines(ReadingDesk desk, byte[] bytes) {
        new FactLines(desk.session()).read(ReadingDesk.file(bytes), false);
        Arrays.stream(new String(bytes, StandardCharsets.UTF_8).split("\n"))
                .filter(line -> line.startsWith("{"))
                .forEach(line -> isKept(FactJson.read(line)));
    }

    /** What a telephone could not send; what cannot be kept says why. */
    static void round(ReadingDesk desk, byte[] bytes) {
        new TakeRound(desk.session()).take(ReadingDesk.file(bytes)).notTaken().forEach(one -> {
            desk.words().check(one.why());
            desk.words().check(one.tryThis());
        });
    }
}
