package org.cupwright.formats.table;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** Days of a table that lie far from all its others: a slip in the year is likelier than a year's pause. */
public final class FarDays {
    /** The word that accepts them. */
    public static final String ABOUT = "days";

    /** So long a pause makes what lies beyond it far (our choice). */
    private static final int PAUSE_DAYS = 366;

    /** More days than these, beyond a pause, are no slip (our choice). */
    private static final int MOST_SLIPS = 3;

    private FarDays() {}

    /** Those that are far; none where the table falls into pieces of one size. */
    public static Set<LocalDate> among(Collection<LocalDate> days) {
        List<List<LocalDate>> pieces = pieces(new TreeSet<>(days));
        int largest = pieces.stream().mapToInt(List::size).max().orElse(0);
        Set<LocalDate> far = new HashSet<>();
        for (List<LocalDate> piece : pieces) {
            if (piece.size() <= MOST_SLIPS && piece.size() < largest) {
                far.addAll(piece);
            }
        }
        return far;
    }

    /** Why a line with such a day is not taken. */
    public static Problem why(LocalDate day) {
        return Problem.of(Message.of("table.far", new Name(day.toString())), Message.of("table.try.far"));
    }

    private static List<List<LocalDate>> pieces(TreeSet<LocalDate> sorted) {
        List<List<LocalDate>> pieces = new ArrayList<>();
        LocalDate before = LocalDate.MIN;
        for (LocalDate day : sorted) {
            if (pieces.isEmpty() || day.isAfter(before.plusDays(PAUSE_DAYS))) {
                pieces.add(new ArrayList<>());
            }
            pieces.get(pieces.size() - 1).add(day);
            before = day;
        }
        return pieces;
    }
}
