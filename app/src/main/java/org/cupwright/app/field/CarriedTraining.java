package org.cupwright.app.field;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.cupwright.app.answers.TrainingText;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.desk.training.ShowTraining;
import org.cupwright.app.desk.training.ShowTraining.EventHoles;
import org.cupwright.app.desk.training.ShowTraining.One;
import org.cupwright.app.desk.training.SkillWord;
import org.cupwright.app.storage.training.Exercise;
import org.cupwright.app.storage.training.HowWell;
import org.cupwright.app.storage.training.Skill;
import org.cupwright.app.visit.Visit;
import org.cupwright.policy.EnumNames;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What a phone carries of training: steps, one's own records, whom one may take along, who may cut for an event. */
record CarriedTraining(Visit visit) {
    ObjectNode of(LocalDate date) {
        ShowTraining training = new ShowTraining(visit.session());
        ShowTraining.History mine = training.mine();
        ObjectNode out = Json.object();
        out.put("maySign", mine.maySign());
        out.put("caution", visit.texts().say("training.caution"));
        steps(mine, out.putArray("steps"));
        named(Stream.of(HowWell.values()), EnumNames::lowerCamel, SkillWord::key, out.putArray("how"));
        exercises(out.putArray("exercises"));
        ArrayNode learners = out.putArray("learners");
        training.learners().forEach(one -> learner(one, learners.addObject()));
        training.eventHoles(date).ifPresent(event -> out.set("event", event(event)));
        return out;
    }

    private void steps(ShowTraining.History mine, ArrayNode out) {
        TrainingText text = new TrainingText(visit.texts(), mine.zone());
        for (Skill skill : Skill.values()) {
            ObjectNode step = out.addObject();
            step.put("id", EnumNames.lowerCamel(skill));
            step.put("name", visit.texts().say(SkillWord.key(skill)));
            step.put("takes", visit.texts().say(SkillWord.takes(skill)));
            step.put("stands", text.stands(mine.person().of(skill)));
        }
    }

    private <E extends Enum<E>> void named(
            Stream<E> all, Function<E, String> id, Function<E, String> key, ArrayNode out) {
        all.forEach(one -> out.addObject()
                .put("id", id.apply(one))
                .put("name", visit.texts().say(key.apply(one))));
    }

    private void exercises(ArrayNode out) {
        for (Exercise exercise : Exercise.values()) {
            out.addObject()
                    .put("id", EnumNames.lowerCamel(exercise))
                    .put("name", visit.texts().say(SkillWord.key(exercise)))
                    .put("yes", visit.texts().say(SkillWord.yes(exercise)))
                    .put("no", visit.texts().say(SkillWord.no(exercise)))
                    .put("goal", exercise.goal());
        }
    }

    private static void learner(One one, ObjectNode out) {
        out.put("name", one.name());
        ArrayNode signed = out.putArray("signed");
        one.skills().stream()
                .filter(stands -> stands.stands().counts())
                .forEach(stands -> signed.add(EnumNames.lowerCamel(stands.skill())));
    }

    private ObjectNode event(EventHoles event) {
        String own = visit.session().person().name();
        ObjectNode out = Json.object();
        out.put("says", cutters(event.names()));
        if (!event.may(own)) {
            out.put("own", visit.texts().say("training.event.notYou"));
        }
        return out;
    }

    /** As people say it: Ash, Bo and Noor. */
    private String cutters(List<String> names) {
        if (names.isEmpty()) {
            return visit.texts().say("training.event.nobody");
        }
        String first = String.join(", ", names.subList(0, names.size() - 1));
        String last = names.get(names.size() - 1);
        return Optional.of(first)
                .filter(some -> !some.isEmpty())
                .map(some -> visit.texts().say("training.event.some", some, last))
                .orElseGet(() -> visit.texts().say("training.event.one", last));
    }
}
