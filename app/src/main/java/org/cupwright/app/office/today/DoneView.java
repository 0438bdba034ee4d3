package org.cupwright.app.office.today;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.log.HolesCut;
import org.cupwright.app.desk.log.HolesCut.HoleCut;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;

/** What has been done of a day's plan, in words. */
record DoneView(Texts texts) {
    /** Of a hole that was left where it was. */
    static final String LEFT = "left";

    /** What is not as it was planned, in the order in which it is said. */
    private static final List<String> OTHERWISE = List.of("elsewhere", "inPlay", LEFT);

    /**
     * What has been done.
     *
     * @param says how many holes are cut, and which of them are not as they were planned
     * @param seenTo how many of the holes were cut or left
     * @param all how many are to be
     */
    record Done(String says, int seenTo, int all) {}

    Done of(StoredPlan plan, HolesCut cut) {
        Map<String, List<String>> holes = new LinkedHashMap<>();
        plan.holes()
                .forEach(hole -> cut.find(hole.hole())
                        .map(was -> key(was, Optional.of(hole)))
                        .ifPresent(key -> holes.computeIfAbsent(key, none -> new ArrayList<>())
                                .add(hole.hole())));
        int seenTo = holes.values().stream().mapToInt(List::size).sum();
        int left = holes.getOrDefault(LEFT, List.of()).size();
        int all = (int) plan.holes().stream()
                .filter(hole -> !hole.stays() || cut.find(hole.hole()).isPresent())
                .count();
        List<String> says = new ArrayList<>();
        says.add(texts.say("today.cutSoFar", seenTo - left, all));
        OTHERWISE.stream()
                .filter(holes::containsKey)
                .map(key ->
                        texts.say("today.otherwise." + key, holes.get(key).size(), String.join(", ", holes.get(key))))
                .forEach(says::add);
        return new Done(String.join(" · ", says), seenTo, all);
    }

    /** Cut as planned or elsewhere, left where it was, or moved while it was played to. */
    static String key(HoleCut cut, Optional<StoredHole> planned) {
        return EnumNames.lowerCamel(
                cut.became(planned.map(hole -> hole.position().judgement().position())));
    }
}
