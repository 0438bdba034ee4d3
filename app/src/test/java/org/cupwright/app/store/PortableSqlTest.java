package org.cupwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What only one database says stands in that one's package: all texts of the program are looked through for it. */
class PortableSqlTest {
    private static final Path SOURCES = Path.of("src/main/java/org/cupwright/app");
    private static final Path SQLITE = SOURCES.resolve("store/sqlite");

    /** Pages may not speak SQL at all (a test of its own); two colons stand there before the name of a part. */
    private static final Path PAGES = Path.of("src/main/java/org/cupwright/app/office");

    /** A text of the program; comments and single characters come first, so that quotes in them begin none. */
    private static final Pattern TEXT =
            Pattern.compile("//[^\n]*|(?s:/\\*.*?\\*/)|'(?:\\\\.|[^'\\\\\n])+'|(\"(?:\\\\.|[^\"\\\\\n])*\")");

    /** Two colons turn types into others; not where the first is of a group of a regular expression. */
    private static final Pattern ONE_DATABASE = Pattern.compile(
            "\\b(?:pragma|vacuum|attach|sqlite\\w*|rowid|user_version|application_id|autoincrement|glob"
                    + "|insert or \\w+|on conflict|cross join|json_\\w+|jsonb\\w*|strftime|julianday"
                    + "|postgres\\w*|pg_\\w+|ilike|unnest|nextval|now\\(\\)|information_schema)\\b"
                    + "|->>|(?<!\\(\\?)::|\\|\\| ''|\\bfor update\\b|\\bdistinct on\\b",
            Pattern.CASE_INSENSITIVE);

    @Test
    void noStoreSaysWhatOnlyOneDatabaseTakes() {
        assertThat(vendorTexts(path -> !path.startsWith(SQLITE) && !path.startsWith(PAGES)))
                .isEmpty();
    }

    /** The same look finds what SQLite alone says where it belongs. */
    @Test
    void theLookFindsIt() {
        assertThat(String.join("\n", vendorTexts(path -> path.startsWith(SQLITE))))
                .contains("PRAGMA", "VACUUM INTO", "ON CONFLICT", "json_each", "json_extract", "|| ''", "CROSS JOIN")
                .contains("sqlite_schema", "user_version", "application_id", "ATTACH");
    }

    private static List<String> vendorTexts(Predicate<Path> among) {
        try (Stream<Path> all = Files.walk(SOURCES)) {
            return all.filter(path -> path.toString().endsWith(".java"))
                    .filter(among)
                    .flatMap(path -> texts(path)
                            .filter(text -> ONE_DATABASE.matcher(text).find())
                            .map(text -> path.getFileName() + ": " + text))
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Stream<String> texts(Path source) {
        try {
            return TEXT.matcher(Files.readString(source))
                    .results()
                    .filter(found -> found.group(1) != null)
                    .map(found -> found.group(1));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
