package org.cupwright.rotation.weeks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.rotation.candidate.Candidate;

/**
 * Where the holes of a plan stand, by the numbers of greens and days, and which spots each green may choose from: where
 * all its holes stay, they are all it needs.
 */
final class Standing {
    private final List<List<Optional<Stand>>> stands;
    private final List<List<Candidate>> choices;

    private Standing(List<List<Optional<Stand>>> stands, List<List<Candidate>> choices) {
        this.stands = stands;
        this.choices = choices;
    }

    /** Nothing was planned: every green may have any of its spots. */
    static Standing nothing(WeeksRequest request) {
        List<Optional<Stand>> none =
                request.days().stream().map(day -> Optional.<Stand>empty()).toList();
        return new Standing(
                request.greens().stream().map(green -> none).toList(),
                request.greens().stream().map(GreenWeeks::spots).toList());
    }

    /** @param anew by number, whether a green may have any of its spots; else those where its holes stand */
    static Standing of(ChangeRequest request, boolean[] anew) {
        List<List<Optional<Stand>>> stands = new ArrayList<>();
        List<List<Candidate>> choices = new ArrayList<>();
        List<GreenWeeks> greens = request.weeks().greens();
        for (int green = 0; green < greens.size(); green++) {
            List<Optional<Stand>> here = request.stands().get(greens.get(green).hole());
            stands.add(here);
            choices.add(choice(greens.get(green), anew[green], here));
        }
        return new Standing(stands, choices);
    }

    /** A hole that stands where a rule is set aside stands on such a spot of the green. */
    private static List<Candidate> choice(GreenWeeks green, boolean anew, List<Optional<Stand>> stands) {
        Map<MapPoint, Candidate> eased =
                green.eased().stream().collect(Collectors.toMap(Candidate::at, Function.identity()));
        Map<MapPoint, Candidate> choice = new LinkedHashMap<>();
        if (anew) {
            green.spots().forEach(spot -> choice.put(spot.at(), spot));
        }
        stands.stream()
                .flatMap(Optional::stream)
                .map(Stand::spot)
                .forEach(spot -> choice.putIfAbsent(spot.at(), eased.getOrDefault(spot.at(), spot)));
        return List.copyOf(choice.values());
    }

    List<Candidate> choice(int green) {
        return choices.get(green);
    }

    /** Whether any hole stands anywhere. */
    boolean isAnything() {
        return stands.stream().flatMap(List::stream).anyMatch(Optional::isPresent);
    }

    Optional<Stand> find(int green, int day) {
        return stands.get(green).get(day);
    }

    /** By day, the number of the spot where the hole stands; {@link GreenTable#NONE} where it has none. */
    int[] numbers(int green, GreenTable table) {
        return IntStream.range(0, stands.get(green).size())
                .map(day -> find(green, day)
                        .map(stand -> table.numberOf(stand.spot().at()))
                        .orElse(GreenTable.NONE))
                .toArray();
    }
}
