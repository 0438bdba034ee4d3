package org.cupwright.app.desk.training;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.cupwright.app.desk.policy.PolicyKeys;
import org.cupwright.app.desk.policy.TrainingPolicy;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.NameKey;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.training.Learnt.Corrected;
import org.cupwright.app.storage.training.Skill;
import org.cupwright.app.storage.training.TrainingRecord;

/** Who learnt what, and who may do what alone. */
public record ShowTraining(Session session) {
    /**
     * Everybody by skills.
     *
     * @param zone by whose clock moments are told
     * @param today the day that is asked about
     * @param people those who have an account and change holes, and whoever else there are records of
     * @param changers accounts that may be named trainers
     * @param maySign whether whoever asks may sign others off
     */
    public record All(ZoneId zone, LocalDate today, List<One> people, List<String> changers, boolean maySign) {}

    /**
     * Somebody.
     *
     * @param skills how the person stands, skill by skill
     * @param trainer whether the person was named a trainer
     */
    public record One(String name, List<Stands> skills, boolean trainer) {
        public Competence of(Skill skill) {
            return skills.get(skill.ordinal()).stands();
        }
    }

    /** How somebody stands with a skill. */
    public record Stands(Skill skill, Competence stands) {}

    /**
     * Somebody's records.
     *
     * @param records all that was written down, the latest first
     * @param corrections those of them that correct others, and count
     */
    public record History(
            ZoneId zone,
            LocalDate today,
            One person,
            List<TrainingRecord> records,
            List<Corrected> corrections,
            boolean maySign) {
        /** What corrects a record, where anything does. */
        public Optional<Corrected> correctionOf(TrainingRecord record) {
            return corrections.stream()
                    .filter(one -> one.of().equals(record.id()))
                    .findFirst();
        }
    }

    /**
     * Who may cut the holes of an event, on a day on which any are cut.
     *
     * @param names those who may, in the order of the alphabet
     */
    public record EventHoles(List<String> names) {
        public boolean may(String name) {
            return names.stream().anyMatch(one -> NameKey.of(one).equals(NameKey.of(name)));
        }
    }

    public All all() {
        return session.look(Right.RECORD, stores -> {
            TrainingDay day = TrainingDay.of(session, stores);
            Competences competences = day.competences(stores);
            List<String> changers = changers(stores).map(KeptPerson::name).toList();
            return new All(
                    day.zone(),
                    day.today(),
                    names(stores, changers).stream()
                            .map(name -> one(stores, competences, name))
                            .toList(),
                    changers,
                    new Signers(competences).may(session.person()));
        });
    }

    /** One's own records; everybody may see them. */
    public History mine() {
        return session.read(stores -> history(stores, session.person().name()));
    }

    /** Somebody's records, for those who sign off; others see their own. */
    public History person(String name) {
        return session.look(Right.RECORD, stores -> {
            TrainingDesk desk = TrainingDesk.of(session, stores);
            String known = desk.person(name).name();
            boolean own = NameKey.of(known).equals(NameKey.of(session.person().name()));
            if (!own) {
                desk.signers().check(session.person(), known);
            }
            return history(stores, known);
        });
    }

    /** Whom somebody may take along and tick for; nobody where that is not hers to do. */
    public List<One> learners() {
        return session.read(stores -> {
            Competences competences = TrainingDay.of(session, stores).competences(stores);
            if (!new Signers(competences).may(session.person())) {
                return List.<One>of();
            }
            String own = NameKey.of(session.person().name());
            List<String> changers = changers(stores).map(KeptPerson::name).toList();
            return names(stores, changers).stream()
                    .filter(name -> !NameKey.of(name).equals(own))
                    .filter(name ->
                            stores.people().named(name).map(KeptPerson::active).orElse(true))
                    .map(name -> one(stores, competences, name))
                    .toList();
        });
    }

    /** Who may cut the holes of an event; empty on a day that the course does not call one. */
    public Optional<EventHoles> eventHoles(LocalDate date) {
        return session.read(stores -> {
            boolean event =
                    PolicyKeys.history(stores, session.course()).at(date).get(TrainingPolicy.EVENT_HOLES);
            Function<Competences, EventHoles> cutters =
                    competences -> new EventHoles(competences.may(Skill.EVENT_HOLES));
            return event
                    ? Optional.of(cutters.apply(TrainingDay.of(session, stores).competences(stores, date)))
                    : Optional.<EventHoles>empty();
        });
    }

    private History history(Stores stores, String name) {
        TrainingDay day = TrainingDay.of(session, stores);
        Competences competences = day.competences(stores);
        List<TrainingRecord> records = stores.training().all().stream()
                .filter(record -> NameKey.of(record.person().name()).equals(NameKey.of(name)))
                .sorted(Comparator.comparing(TrainingRecord::at).reversed())
                .toList();
        List<Corrected> corrections = records.stream()
                .flatMap(record -> competences.correctionOf(record.id()).stream())
                .toList();
        boolean maySign = new Signers(competences).may(session.person());
        return new History(day.zone(), day.today(), one(stores, competences, name), records, corrections, maySign);
    }

    private static Stream<KeptPerson> changers(Stores stores) {
        return stores.people().all().stream()
                .filter(KeptPerson::active)
                .filter(person -> person.role().equals("changer"));
    }

    /** Each once, by the name it has among the accounts. */
    private static List<String> names(Stores stores, List<String> changers) {
        TreeMap<String, String> names = new TreeMap<>();
        changers.forEach(name -> names.put(NameKey.of(name), name));
        stores.training()
                .all()
                .forEach(record -> names.putIfAbsent(
                        NameKey.of(record.person().name()), record.person().name()));
        return List.copyOf(names.values());
    }

    private static One one(Stores stores, Competences competences, String name) {
        List<Stands> skills = Stream.of(Skill.values())
                .map(skill -> new Stands(skill, competences.of(name, skill)))
                .toList();
        boolean trainer = stores.people()
                .named(name)
                .filter(KeptPerson::active)
                .filter(person -> competences.isTrainer(person.id()))
                .isPresent();
        return new One(name, skills, trainer);
    }
}
