package org.cupwright.app.field;

import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.desk.entry.SentForm;
import org.cupwright.app.desk.entry.carried.CarriedPractice;
import org.cupwright.app.storage.training.TrainingRecord;
import org.cupwright.app.visit.Visit;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import tools.jackson.databind.node.ObjectNode;

/** What the changer's page sends of a learner's round. */
@Controller
final class LearningController {
    /**
     * Keeps it once, however often it is sent. What is answered is on the disk.
     *
     * @param id its own, made where it was written down
     */
    @PostMapping("/round/training/{id}")
    ResponseEntity<String> take(Visit visit, @PathVariable UUID id, @RequestParam String entry) {
        CarriedPractice carried = CarriedPractice.read(entry);
        carried.checkWrittenBy(visit.session().person());
        Optional<TrainingRecord> kept = new SentForm(visit.session(), id).once(carried::keep);
        ObjectNode answer = Json.object();
        answer.put("id", id.toString());
        answer.put("kept", kept.isPresent() ? "now" : "before");
        return RoundController.json(200, answer);
    }
}
