package org.cupwright.formats.table;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** What a table says, line by line, as far as it reads. */
public final class Reading<T> {
    private final List<Read<T>> read = new ArrayList<>();
    private final List<NotReadLine> notRead = new ArrayList<>();
    private Optional<String> unended = Optional.empty();

    /** What a line says. */
    private record Read<T>(Line line, T value) {}

    Reading() {}

    void add(Line line, T value) {
        read.add(new Read<>(line, value));
    }

    void add(NotReadLine line) {
        notRead.add(line);
    }

    void endsWithin(String line) {
        unended = Optional.of(line);
    }

    /** Takes back lines whose days are far from all others. */
    public void withoutFarDays(Function<T, LocalDate> dayOf) {
        Set<LocalDate> far = FarDays.among(values().stream().map(dayOf).toList());
        read.stream()
                .filter(each -> far.contains(dayOf.apply(each.value())))
                .forEach(each -> notRead.add(each.line().notRead(FarDays.why(dayOf.apply(each.value())))));
        read.removeIf(each -> far.contains(dayOf.apply(each.value())));
        notRead.sort(Comparator.comparing(NotReadLine::number));
    }

    /** What reads, in the order of the table. */
    public List<T> values() {
        return read.stream().map(Read::value).toList();
    }

    /** The lines that read. */
    List<Line> lines() {
        return read.stream().map(Read::line).toList();
    }

    public List<NotReadLine> notRead() {
        return List.copyOf(notRead);
    }

    /** The last line, where the file ends without a line end and it reads nevertheless: it may have lost its end. */
    public Optional<String> unended() {
        return unended;
    }
}
