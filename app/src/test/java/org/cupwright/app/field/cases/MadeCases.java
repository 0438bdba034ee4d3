package org.cupwright.app.field.cases;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;

/** The files of cases as they are made: seeded, worked out by the slow way, the same on every machine. */
final class MadeCases {
    private static final String ABOUT =
            "# Invented. Made and worked out by %s, slowly; never typed in. Metres, degrees."
                    + "\n# Run MadeCasesTest with -Dcupwright.cases=write to make it anew.\n";

    private MadeCases() {}

    /** What each file says, by its name. */
    static Map<String, Supplier<String>> all() {
        return new TreeMap<>(Map.of(
                "paces.txt", () -> file("PaceCases", PaceCases.lines()),
                "places.txt", () -> file("PlaceCases", PlaceCases.lines()),
                "tapes.txt", () -> file("TapeCases", TapeCases.lines()),
                "meetings.txt", () -> file("MeetingCases", MeetingCases.lines()),
                "phones.txt", () -> file("PhoneCases", PhoneCases.lines())));
    }

    private static String file(String maker, List<String> lines) {
        return String.format(ABOUT, maker) + String.join("\n", lines) + "\n";
    }
}
