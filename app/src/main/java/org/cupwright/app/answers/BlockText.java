package org.cupwright.app.answers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Course;
import org.cupwright.course.Loop;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.rotation.Totals;
import org.cupwright.rotation.counting.Parts;

/**
 * The nines, eighteens and practice greens of a course, as lists and paper head them.
 *
 * @param all in their order
 */
public record BlockText(Texts texts, List<Loop> all) {
    public BlockText(Texts texts, Course course) {
        this(texts, course.blocks());
    }

    /** What stands over a part; over a round that is the only one and has no name, nothing. */
    public Optional<String> title(Loop block) {
        boolean onlyRound = !block.practice()
                && all.stream().filter(other -> !other.practice()).count() == 1;
        return onlyRound && block.name().isEmpty() ? Optional.empty() : Optional.of(name(block));
    }

    /** What a part is called: its name, or else its first and last hole. */
    public String name(Loop block) {
        if (!block.name().isEmpty()) {
            return block.name();
        }
        String holes = range(block);
        return block.practice() ? texts.say("block.practice", holes) : holes;
    }

    private String range(Loop block) {
        List<String> holes = block.holes();
        return holes.size() == 1 ? holes.get(0) : texts.say("block.fromTo", holes.get(0), holes.get(holes.size() - 1));
    }

    /** The head of a part in a plan, with how its holes are spread; of a practice green, that it is not planned. */
    Optional<String> head(Loop block, StoredPlan plan) {
        if (block.practice()) {
            return title(block).map(title -> title + ": " + yours(block));
        }
        return title(block)
                .map(title -> title
                        + spread(totals(block, plan), texts)
                                .map(spread -> "   " + spread)
                                .orElse(""));
    }

    /** {@code 3 holes, yours to choose}. */
    public String yours(Loop block) {
        return texts.say("block.yours", block.holes().size());
    }

    /** How holes are spread over the greens and over what is harder; empty where nothing of it is known. */
    static Optional<String> spread(Totals totals, Texts texts) {
        List<String> parts = new ArrayList<>();
        parts.add(parts(totals.thirds(), texts, "third.front", "third.middle", "third.back"));
        parts.add(parts(totals.laterals(), texts, "lateral.left", "lateral.centre", "lateral.right"));
        parts.add(parts(totals.difficulties(), texts, "difficulty.easier", "difficulty.medium", "difficulty.harder"));
        parts.removeIf(String::isEmpty);
        return parts.isEmpty() ? Optional.empty() : Optional.of(String.join("   ", parts));
    }

    private static String parts(Parts parts, Texts texts, String first, String second, String third) {
        if (parts.total() == 0) {
            return "";
        }
        return texts.say(first) + " " + parts.first() + " · " + texts.say(second) + " " + parts.second() + " · "
                + texts.say(third) + " " + parts.third();
    }

    private static Totals totals(Loop block, StoredPlan plan) {
        List<JudgedPosition> positions = block.holes().stream()
                .flatMap(hole -> plan.find(hole).stream())
                .map(StoredHole::position)
                .toList();
        List<PlaceOnGreen> places = positions.stream()
                .flatMap(position -> position.place().stream())
                .toList();
        List<Enum<?>> ranks = new ArrayList<>();
        positions.forEach(position -> position.judgement().difficulty().rank().ifPresent(ranks::add));
        return new Totals(
                positions.size(),
                counted(places.stream().map(PlaceOnGreen::third).toList()),
                counted(places.stream().map(PlaceOnGreen::lateral).toList()),
                counted(ranks));
    }

    /** How many of the first, second and third choice there are. */
    private static Parts counted(List<? extends Enum<?>> choices) {
        int[] counts = new int[3];
        choices.forEach(choice -> counts[choice.ordinal()]++);
        return new Parts(counts[0], counts[1], counts[2]);
    }
}
