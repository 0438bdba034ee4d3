package org.cupwright.app.answers;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.cupwright.app.answers.Line.Cell;
import org.cupwright.app.answers.Line.Fit;
import org.cupwright.app.texts.Texts;

/** An answer in words, line by line, the same at every door. */
public final class Lines {
    private final Texts texts;
    private final List<Line> all = new ArrayList<>();

    public Lines(Texts texts) {
        this.texts = texts;
    }

    public List<Line> all() {
        return List.copyOf(all);
    }

    /** The words of a key. */
    public Lines say(String key, Object... plain) {
        return line(texts.say(key, plain));
    }

    public Lines line(String text) {
        return row(List.of(), text);
    }

    /** A blank line, and the words of a key. */
    Lines heading(String key, Object... plain) {
        return gap().say(key, plain);
    }

    Lines gap() {
        return line("");
    }

    Lines row(List<Cell> cells, String text) {
        return add(cells, List.of(text), Fit.WHOLE);
    }

    Lines wrapped(List<Cell> cells, String text) {
        return add(cells, List.of(text), Fit.WRAPPED);
    }

    /** A paragraph after a head, below which it hangs. */
    Lines wrapped(String head, String text) {
        return wrapped(List.of(new Cell(head, 0)), text);
    }

    /** A paragraph that begins a little before its other lines. */
    Lines indented(String head, String text) {
        return add(List.of(new Cell(head, 0)), List.of(text), Fit.INDENTED);
    }

    /** As many sentences as fit on a line. */
    Lines first(String head, List<String> sentences) {
        return sentences.isEmpty() ? this : add(List.of(new Cell(head, 0)), sentences, Fit.FIRST);
    }

    private Lines add(List<Cell> cells, List<String> said, Fit fit) {
        all.add(new Line(cells, said, fit));
        return this;
    }

    /** What is alike by something, together and in the order of the first of each. */
    static <T, K> Collection<List<T>> alike(Collection<T> items, Function<T, K> by) {
        Map<K, List<T>> groups =
                items.stream().collect(Collectors.groupingBy(by, LinkedHashMap::new, Collectors.toList()));
        return groups.values();
    }
}
