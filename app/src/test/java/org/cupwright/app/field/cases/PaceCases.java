package org.cupwright.app.field.cases;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Lengths in paces: half paces are walked off one by one, in decimals without any rounding. */
final class PaceCases {
    private static final int CASES = 500;

    private PaceCases() {}

    static List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("# To the half pace, and down to it. Half way between two, the even number of halves counts.");
        for (String halfWay : List.of("0.25", "0.75", "1.25", "1.75", "5.25", "11.75", "0", "0.5", "12")) {
            lines.add(line(new BigDecimal(halfWay), BigDecimal.ONE));
        }
        Random random = new Random(47);
        while (lines.size() < CASES) {
            BigDecimal metres = decimals(random.nextDouble() * 45);
            BigDecimal pace =
                    random.nextInt(3) == 0 ? new BigDecimal("0.914") : decimals(0.5 + 0.7 * random.nextDouble());
            if (clear(metres, pace)) {
                lines.add(line(metres, pace));
            }
        }
        return lines;
    }

    private static BigDecimal decimals(double value) {
        return new BigDecimal(String.format(Locale.ROOT, "%.4f", value));
    }

    /** Not so near a border that numbers of a computer may lie on its other side. */
    private static boolean clear(BigDecimal metres, BigDecimal pace) {
        double quarters = 4 * metres.doubleValue() / pace.doubleValue();
        return Math.abs(quarters - Math.rint(quarters)) > 1e-4;
    }

    private static String line(BigDecimal metres, BigDecimal pace) {
        BigDecimal half = pace.multiply(new BigDecimal("0.5"));
        BigDecimal left = metres;
        int halves = 0;
        while (left.compareTo(half) >= 0) {
            left = left.subtract(half);
            halves++;
        }
        int over = left.multiply(BigDecimal.valueOf(2)).compareTo(half);
        int nearest = over > 0 || over == 0 && halves % 2 == 1 ? halves + 1 : halves;
        return "pace metres=" + metres + " pace=" + pace + " half=" + nearest / 2.0 + " down=" + halves / 2.0;
    }
}
