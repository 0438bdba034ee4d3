package org.cupwright.app.desk.begin;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Problem;
import org.cupwright.units.WrittenNumber;

/** Corners as they are typed or clicked: two numbers a line. */
final class TypedCorners {
    /** More no green needs: our choice. */
    private static final int MOST = 500;

    private static final int FEWEST = 3;

    private TypedCorners() {}

    /** Two numbers. */
    record Pair(double first, double second) {}

    /** All lines; none where one of them is wrong, which is then told. */
    static List<Pair> read(TypedFields fields, String field) {
        List<Pair> pairs = new ArrayList<>();
        int number = 0;
        for (String line : fields.text(field).split("\\R")) {
            number++;
            if (!line.isBlank()) {
                Optional<Pair> pair = pair(line.strip());
                if (pair.isEmpty()) {
                    fields.refuse(field, Problem.of("begin.corner", field, line.strip(), new Count(number)));
                    return List.of();
                }
                pairs.add(pair.get());
            }
        }
        if (pairs.size() < FEWEST || pairs.size() > MOST) {
            fields.refuse(
                    field, Problem.of("begin.corners", field, pairs.size(), new Count(pairs.size()), new Count(MOST)));
            return List.of();
        }
        return pairs;
    }

    /** Parted by blanks or a semicolon; by a comma only where nothing else parts them. */
    private static Optional<Pair> pair(String line) {
        String[] parts = line.split("[,;]?\\s+|;");
        if (parts.length == 1) {
            parts = line.split(",");
        }
        if (parts.length != 2) {
            return Optional.empty();
        }
        Optional<Double> first = WrittenNumber.find(parts[0]);
        Optional<Double> second = WrittenNumber.find(parts[1]);
        return first.isPresent() && second.isPresent()
                ? Optional.of(new Pair(first.get(), second.get()))
                : Optional.empty();
    }
}
