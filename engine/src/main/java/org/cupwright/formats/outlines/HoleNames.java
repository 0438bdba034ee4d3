package org.cupwright.formats.outlines;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.formats.Excerpt;
import org.cupwright.message.Message;

/**
 * Names for the holes of a map file: the file's own where they can be used, 7b for the second 7, G1, G2, … in the order
 * of the file where it names none.
 */
final class HoleNames {
    private static final int LONGEST = 8;
    private static final Pattern WORDY = Pattern.compile("(?i)(?:hole|green|no|nr)[.\\s#]*([A-Za-z0-9]{1,8})");

    private final List<Finding> findings;
    private final Set<String> taken = new HashSet<>();

    private HoleNames(List<Finding> findings) {
        this.findings = findings;
    }

    /** One name for each draft, in their order, no two the same. */
    static List<String> of(List<HoleDraft> drafts, List<Finding> findings) {
        HoleNames names = new HoleNames(findings);
        List<Optional<String>> wanted =
                drafts.stream().map(draft -> names.wanted(draft, drafts)).toList();
        List<Optional<String>> given =
                wanted.stream().map(name -> name.filter(names.taken::add)).toList();
        List<String> all = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            HoleDraft draft = drafts.get(i);
            Optional<String> name = wanted.get(i);
            all.add(given.get(i)
                    .orElseGet(() ->
                            name.map(twice -> names.another(twice, draft)).orElseGet(() -> names.numbered(draft))));
        }
        return all;
    }

    /** Where every loop has a first hole, the loop's initial goes before: L1 to L9, F1 to F9. */
    private Optional<String> wanted(HoleDraft draft, List<HoleDraft> all) {
        String before = draft.loop()
                .filter(loop -> loop.matches("[A-Za-z].*") && repeats(loop, all))
                .map(loop -> loop.substring(0, 1).toUpperCase(Locale.ROOT))
                .orElse("");
        return draft.ref()
                .flatMap(ref -> usable(ref, draft))
                .map(name ->
                        before.isEmpty() ? name : before + name.substring(0, Math.min(LONGEST - 1, name.length())));
    }

    private static boolean repeats(String loop, List<HoleDraft> all) {
        Predicate<HoleDraft> own = draft -> draft.loop().equals(Optional.of(loop));
        Set<Optional<String>> refs =
                all.stream().filter(own).map(HoleDraft::ref).collect(Collectors.toSet());
        return all.stream()
                .anyMatch(other -> other.loop().isPresent() && !own.test(other) && refs.contains(other.ref()));
    }

    private Optional<String> usable(String ref, HoleDraft draft) {
        if (ref.matches("[A-Za-z0-9]{1,8}")) {
            return Optional.of(ref);
        }
        Matcher wordy = WORDY.matcher(ref.strip());
        if (wordy.matches()) {
            return Optional.of(wordy.group(1));
        }
        String clean = ref.replaceAll("[^A-Za-z0-9]", "");
        String kept = clean.substring(0, Math.min(LONGEST, clean.length()));
        findings.add(Finding.of(FindingKind.REF_NOT_USABLE, where(draft), Excerpt.of(ref))
                .at(draft.green().outline().centroid()));
        return Optional.of(kept).filter(name -> !name.isEmpty());
    }

    private String another(String name, HoleDraft draft) {
        String stem = name.substring(0, Math.min(name.length(), LONGEST - 2));
        String other = suffixes()
                .map(suffix -> stem + suffix)
                .filter(taken::add)
                .findFirst()
                .orElseThrow();
        findings.add(Finding.of(FindingKind.REF_USED_TWICE, where(draft), name)
                .trying(other)
                .at(draft.green().outline().centroid()));
        return other;
    }

    /** b, c, … z, then bb, cb, … and so on: more than any file needs. */
    private static Stream<String> suffixes() {
        return Stream.of("", "b", "c", "d", "e", "f", "g", "h").flatMap(HoleNames::letters);
    }

    private static Stream<String> letters(String after) {
        return "bcdefghijklmnopqrstuvwxyz".chars().mapToObj(letter -> (char) letter + after);
    }

    private String numbered(HoleDraft draft) {
        int number = 1;
        while (!taken.add("G" + number)) {
            number++;
        }
        String name = "G" + number;
        findings.add(Finding.of(FindingKind.GREEN_WITHOUT_REF, draft.green().where(), name)
                .at(draft.green().outline().centroid()));
        return name;
    }

    private static Message where(HoleDraft draft) {
        return draft.line().map(HoleLine::where).orElse(draft.green().where());
    }
}
