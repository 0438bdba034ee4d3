package org.cupwright.app.texts;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cupwright.app.desk.policy.Settings;
import org.cupwright.app.session.Role;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.finding.FindingKind;
import org.cupwright.holelocation.RuleId;
import org.cupwright.policy.EnumNames;
import org.cupwright.rotation.Term;

/** Every key that the engine and the app can ask a sentence for, found in their sources. */
final class SentenceKeys {
    private static final Set<Term> OF_THE_WHOLE_DAY = EnumSet.of(Term.LEFT_RIGHT, Term.LATERAL, Term.DIFFICULTY);

    private static final Path ENGINE = Path.of("../engine/src/main/java/org/cupwright");
    private static final Path APP = Path.of("src/main/java/org/cupwright/app");
    private static final List<Path> PAGES =
            Stream.of("office", "visit", "field").map(APP::resolve).toList();
    private static final Path TEMPLATES = Path.of("src/main/resources/org/cupwright/app/office/pages");

    /** What runs in the browser of whoever goes round. */
    private static final Path CARRIED = Path.of("src/main/resources/org/cupwright/app/field/files");

    /** What a rule says of a spot against which it has nothing, or cannot tell. */
    private static final Set<String> NOTHING_AGAINST =
            Set.of("pass", "none", "notChecked", "uncertain", "dry", "good", "usual", "unsaid");

    private static final String MESSAGE =
            "(?:Message\\.of\\(|(?<!page\\.)(?<!\\)\\.)say\\()\\s*\"([a-z][A-Za-z]*(?:\\.[A-Za-z]+)*)\"";

    private static final String ALL_SOURCES =
            String.join("\n", sources(ENGINE)) + String.join("\n", sources(APP)) + pageSources();

    /** A problem whose two sentences have one name. */
    private static final String PROBLEM = "Problem\\.of\\(\\s*\"([a-z][A-Za-z]*(?:\\.[A-Za-z]+)*)\"";

    private static final String FIELD = "Field\\(\"([a-zA-Z]+)\"\\)";

    private static final String PAGE_SOURCES = pageSources();

    private static final Set<String> NEEDED = found();

    private static final Set<String> OF_PAGES = ofPages();

    private SentenceKeys() {}

    /** Keys that must have a sentence. */
    static Set<String> needed() {
        return NEEDED;
    }

    private static Set<String> found() {
        Set<String> keys = new TreeSet<>();
        Settings.catalogue().settings().forEach(setting -> keys.add(setting.sentenceKey()));
        for (FindingKind kind : FindingKind.values()) {
            keys.add(kind.key());
            if (kind != FindingKind.FEATURE_LEFT_OUT) {
                keys.add(kind.tryKey()); // a feature left out keeps the advice of its trouble
            }
        }
        keys.addAll(literals(ENGINE, "\"((?:survey|rotation)\\.(?:where|whyNot|reason|finding)\\.[A-Za-z]+)\""));
        addRotation(keys);
        keys.addAll(literals(ENGINE.resolve("cupchange/check"), "\"((?:fact)\\.[A-Za-z]+)\""));
        addTyped(
                keys,
                ENGINE.resolve("cupchange"),
                "(?:new ImpossibleFact|notAbove)\\(\\s*\"([A-Za-z]+)\"",
                "impossible.");
        addTyped(keys, ENGINE.resolve("cupchange"), "(?:word|between|count)\\(\\s*\"([A-Za-z]+)\"", "quantity.");
        addTyped(keys, ENGINE.resolve("policy"), "accepts\\(\\s*\"([A-Za-z]+)\"", "accepts.");
        keys.addAll(LogbookKeys.all());
        keys.addAll(fields());
        for (String measure : literals(ENGINE.resolve("cupchange/check"), "\"((?:hole|cup|stop)Depth)\"")) {
            keys.add("measure." + measure);
        }
        for (RuleId rule : RuleId.values()) {
            keys.add("rule." + rule.id());
            words(rule).forEach(word -> keys.add("rule." + rule.id() + "." + word));
        }
        for (String name : literals(APP, PROBLEM)) {
            keys.add("problem." + name);
            keys.add("try." + name);
        }
        for (String name : literals(APP, "PeopleProblems\\.of\\(\\s*\"(\\w+)\"")) {
            keys.add("people.problem." + name);
            keys.add("people.try." + name);
        }
        for (AuditKind kind : AuditKind.values()) {
            keys.add("audit." + EnumNames.lowerCamel(kind));
        }
        for (Role role : Role.values()) {
            keys.add("people.role." + EnumNames.lowerCamel(role));
        }
        for (String field : literals(APP, FIELD)) {
            keys.add("field." + field);
        }
        keys.addAll(literals(APP, MESSAGE));
        return keys;
    }

    /** Keys that pages alone ask for: for these the pages' own words do. */
    static Set<String> ofPages() {
        Set<String> keys = ofPages(MESSAGE);
        for (String name : ofPages(PROBLEM)) {
            keys.add("problem." + name);
            keys.add("try." + name);
        }
        ofPages("Problem\\.of\\(\\s*\"[\\w.]+\",\\s*\"(\\w+)\"").forEach(name -> keys.add("field." + name));
        for (RuleId rule : RuleId.values()) {
            words(rule).stream()
                    .filter(word -> !NOTHING_AGAINST.contains(word))
                    .forEach(word -> keys.add("round.why." + rule.id() + "." + word));
        }
        for (Path place : List.of(TEMPLATES, CARRIED)) {
            keys.addAll(literals(place, "say\\('([a-zA-Z.]+)'(?!\\s*\\+)"));
        }
        return keys;
    }

    private static Set<String> ofPages(String pattern) {
        Set<String> found = new TreeSet<>();
        PAGES.forEach(room -> found.addAll(literals(room, pattern)));
        return found;
    }

    private static String pageSources() {
        return Stream.concat(PAGES.stream(), Stream.of(TEMPLATES, CARRIED))
                .flatMap(place -> sources(place).stream())
                .collect(Collectors.joining("\n"))
                .replace('\'', '"');
    }

    /** Whether a page can ask for a key: wholly, made up from its beginning or its end, or as the word of a field. */
    static boolean usedByPages(String key) {
        String beginning = key.substring(0, key.lastIndexOf('.') + 1);
        String last = key.substring(key.lastIndexOf('.') + 1);
        return OF_PAGES.contains(key)
                || PAGE_SOURCES.contains('"' + key + '"')
                || key.endsWith(".try") && PAGE_SOURCES.contains('"' + key.replaceFirst("\\.try$", "") + '"')
                || key.startsWith("field.") && ALL_SOURCES.contains('"' + last + '"')
                || key.startsWith("setting.name.") && PAGE_SOURCES.contains("\"setting.name.\"")
                || key.startsWith("log.page.part.") && PAGE_SOURCES.contains("\"log.page.part.\"")
                || !beginning.isEmpty() && PAGE_SOURCES.contains('"' + beginning + '"');
    }

    /** Keys of the fields that app and engine speak of. */
    static Set<String> fields() {
        Set<String> keys = new TreeSet<>();
        for (Path place : List.of(ENGINE, APP)) {
            literals(place, "new (?:Message\\.)?Field\\(\\s*\"(\\w+)\"").forEach(name -> keys.add("field." + name));
            literals(place, "PeopleProblems\\.of\\(\\s*\"\\w+\",\\s*\"(\\w+)\"")
                    .forEach(name -> keys.add("field." + name));
            literals(place, "Problem\\.of\\(\\s*\"[\\w.]+\",\\s*\"(\\w+)\"").forEach(name -> keys.add("field." + name));
        }
        return keys;
    }

    /** Whether app or engine can ask for a key: it is needed, stands in a source, or begins as a key made up there. */
    static boolean used(String key) {
        boolean whole = ALL_SOURCES.contains('"' + key + '"');
        String beginning = key.substring(0, key.lastIndexOf('.') + 1);
        boolean madeUp = !beginning.isEmpty() && ALL_SOURCES.contains('"' + beginning + '"');
        boolean placed = key.startsWith("area.") && ALL_SOURCES.contains("\"area.\"");
        return whole
                || NEEDED.contains(key)
                || LogbookKeys.all().contains(key)
                || (madeUp && !key.startsWith("rule.") && !key.startsWith("rotation."))
                || placed;
    }

    /** Keys of which a source names the last part alone. */
    private static void addTyped(Set<String> keys, Path sources, String pattern, String beginning) {
        literals(sources, pattern).forEach(last -> keys.add(beginning + last));
    }

    private static void addRotation(Set<String> keys) {
        Path rotation = ENGINE.resolve("rotation");
        for (String reason : literals(rotation.resolve("Reasons.java"), "reason\\(\\s*\"([A-Za-z]+)\"")) {
            keys.add("rotation.reason." + reason);
        }
        for (String yesterday : literals(rotation.resolve("Reasons.java"), "\"((?:near|from)Yesterday)\"")) {
            keys.add("rotation.reason." + yesterday);
        }
        for (String rule : literals(rotation.resolve("Reasons.java"), "[ (]rule\\(\"([A-Za-z]+)\"")) {
            keys.add("rotation.reason." + rule);
            keys.add("rotation.reason." + rule + "Measured");
        }
        for (String file : List.of("Shortfalls.java", "Choosable.java")) {
            for (String finding : literals(
                    rotation.resolve(file), "(?:name|parts|leftOut)\\(\\s*\"([A-Za-z]+)\"|\"(\\w+)\", green[,)]")) {
                keys.add("rotation.finding." + finding);
            }
        }
        for (Term term : Term.values()) {
            keys.add("rotation.whyNot." + EnumNames.lowerCamel(term));
            if (OF_THE_WHOLE_DAY.contains(term)) {
                keys.add("rotation.finding." + EnumNames.lowerCamel(term));
            }
        }
    }

    /** The last parts of the keys a rule can answer with, from its source. */
    private static Set<String> words(RuleId rule) {
        String name = Character.toUpperCase(rule.id().charAt(0)) + rule.id().substring(1) + "Rule.java";
        Path file = ENGINE.resolve("holelocation/rule").resolve(name);
        String source = String.join("\n", sources(file));
        Set<String> words = new TreeSet<>(literals(file, "(?:saying\\(|message\\(|bare\\([^;]*?, )\"([A-Za-z]+)\""));
        for (String outcome : literals(file, "LeaningOutcome\\.of\\(Outcome\\.([A-Z]+)\\)")) {
            words.add(outcome.toLowerCase(Locale.ROOT));
        }
        if (source.contains("Distances.outcome(")) {
            words.addAll(List.of("pass", "caution", "fail"));
        }
        if (source.contains("LeaningOutcome.between(")) {
            words.addAll(List.of("pass", "caution", "check", "fail"));
        }
        if (source.contains("new WorstAbout(")) {
            words.addAll(List.of("gap", "notChecked"));
        }
        if (source.contains("notChecked()")) {
            words.add("notChecked");
        }
        return words;
    }

    static Set<String> literals(Path place, String pattern) {
        Set<String> found = new TreeSet<>();
        for (String source : sources(place)) {
            Matcher matcher = Pattern.compile(pattern).matcher(source);
            while (matcher.find()) {
                for (int group = 1; group <= matcher.groupCount(); group++) {
                    if (matcher.group(group) != null) {
                        found.add(matcher.group(group));
                    }
                }
            }
        }
        return found;
    }

    /** Sources below a place; of the app without its pages, unless these are asked for. */
    static List<String> sources(Path place) {
        try (Stream<Path> files = Files.walk(place)) {
            List<Path> java = files.filter(file -> file.toString().matches(".*\\.(java|html|js)"))
                    .filter(file -> PAGES.stream().anyMatch(place::startsWith)
                            || PAGES.stream().noneMatch(file::startsWith))
                    .sorted()
                    .toList();
            return java.stream().map(SentenceKeys::text).toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
