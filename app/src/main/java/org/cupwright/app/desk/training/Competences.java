package org.cupwright.app.desk.training;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.cupwright.app.storage.NameKey;
import org.cupwright.app.storage.training.Learnt.Corrected;
import org.cupwright.app.storage.training.Learnt.SignedOff;
import org.cupwright.app.storage.training.Learnt.Trainer;
import org.cupwright.app.storage.training.Learnt.Withdrawn;
import org.cupwright.app.storage.training.Skill;
import org.cupwright.app.storage.training.TrainingRecord;

/**
 * What everybody is signed off for, on a day. Of what was decided about a person and a skill the latest day counts, and
 * of the same day what came last; a correction stands for what it corrects.
 */
public final class Competences {
    private final LocalDate today;
    private final int refresherMonths;
    private final Map<UUID, Corrected> corrections = new HashMap<>();
    private final Map<String, String> names = new HashMap<>();
    private final Map<String, List<Decided>> decided = new HashMap<>();
    private final Set<UUID> trainers = new HashSet<>();

    /** @param decisions in the order in which they came */
    public Competences(List<TrainingRecord> decisions, LocalDate today, int refresherMonths) {
        this.today = today;
        this.refresherMonths = refresherMonths;
        decisions.forEach(this::takeCorrection);
        decisions.forEach(this::take);
        decided.values().forEach(all -> all.sort(Comparator.comparing(Decided::day)));
    }

    private void takeCorrection(TrainingRecord record) {
        if (record.learnt() instanceof Corrected corrected) {
            corrections.put(corrected.of(), corrected); // of several the last counts
        }
    }

    private void take(TrainingRecord record) {
        if (record.learnt() instanceof SignedOff signed) {
            keep(record, signed.skill(), signed.day());
        } else if (record.learnt() instanceof Withdrawn ended) {
            keep(record, ended.skill(), ended.day());
        } else if (record.learnt() instanceof Trainer trainer) {
            record.person().id().ifPresent(trainer.may() ? trainers::add : trainers::remove);
        }
    }

    private void keep(TrainingRecord record, Skill skill, LocalDate day) {
        String key = NameKey.of(record.person().name());
        names.putIfAbsent(key, record.person().name());
        List<Decided> ofPerson = decided.computeIfAbsent(key, none -> new ArrayList<>());
        Optional<Corrected> corrected = Optional.ofNullable(corrections.get(record.id()));
        corrected
                .map(Corrected::day)
                .orElse(Optional.of(day))
                .ifPresent(counting -> ofPerson.add(new Decided(record, skill, counting)));
    }

    /** How somebody stands with a skill. */
    public Competence of(String name, Skill skill) {
        return decided.getOrDefault(NameKey.of(name), List.of()).stream()
                .filter(one -> one.skill() == skill)
                .reduce((earlier, later) -> later)
                .map(one -> Competence.of(one.learnt(), one.record().by().name(), today, refresherMonths))
                .orElseGet(Competence.NotYet::new);
    }

    /** Whether the account may sign others off. */
    public boolean isTrainer(UUID account) {
        return trainers.contains(account);
    }

    /** Everybody of whom anything was ever decided, in the order of the alphabet. */
    public List<String> names() {
        return names.values().stream().sorted(Comparator.comparing(NameKey::of)).toList();
    }

    /** Those who may do something alone, in the order of the alphabet. */
    public List<String> may(Skill skill) {
        return names().stream().filter(name -> of(name, skill).counts()).collect(Collectors.toList());
    }

    /** The correction of a record that counts. */
    Optional<Corrected> correctionOf(UUID record) {
        return Optional.ofNullable(corrections.get(record));
    }
}
