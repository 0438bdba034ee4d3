package org.cupwright.app.desk.entry;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.cupwright.policy.EnumNames;

/** The kinds of entries and what each can say, for those who look them up. */
public final class EntryKinds {
    private EntryKinds() {}

    /**
     * A kind of entry.
     *
     * @param kind its name, as in files
     * @param typed its name, as it is easiest to type
     * @param parts what it can say
     */
    public record Kind(String kind, String typed, List<PartOf> parts) {}

    /**
     * A part of an entry.
     *
     * @param name its name
     * @param place whether it is the place of which the entry speaks
     * @param optional whether it may be left out
     * @param choices what it can be, where that is a choice
     */
    public record PartOf(String name, boolean place, boolean optional, List<String> choices) {}

    /** All kinds, or the one that is meant. */
    public static List<Kind> of(Optional<String> given) {
        return given
                .map(EntryForm::of)
                .map(List::of)
                .orElseGet(
                        () -> EntryForm.kinds().stream().map(EntryForm::ofKind).toList())
                .stream()
                .map(EntryKinds::kind)
                .toList();
    }

    private static Kind kind(EntryForm form) {
        Optional<Part> place = form.place();
        List<PartOf> parts = form.parts().stream()
                .map(part -> new PartOf(
                        part.name(),
                        place.equals(Optional.of(part)),
                        part.optional() || Draft.goesWithoutSaying(part),
                        choices(part)))
                .toList();
        return new Kind(form.kind(), EntryForm.typed(form.kind()), parts);
    }

    private static List<String> choices(Part part) {
        if (part.type() == boolean.class) {
            return List.of("yes", "no");
        }
        return part.type().isEnum()
                ? Arrays.stream(part.type().getEnumConstants())
                        .map(choice -> EntryForm.typed(EnumNames.lowerCamel((Enum<?>) choice)))
                        .toList()
                : List.of();
    }
}
