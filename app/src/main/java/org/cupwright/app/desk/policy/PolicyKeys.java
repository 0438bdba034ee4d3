package org.cupwright.app.desk.policy;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.CourseChoice;
import org.cupwright.app.storage.PolicyStore;
import org.cupwright.app.storage.Stores;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.policy.PolicyCatalogue;
import org.cupwright.policy.Setting;

/** Which setting, and whose. */
final class PolicyKeys {
    private PolicyKeys() {}

    static Setting<?> setting(PolicyCatalogue catalogue, String key) {
        return catalogue.find(key).orElseThrow(() -> unknown(catalogue, key));
    }

    /** The course whose settings are meant; before there is any course, {@link PolicyStore#EVERY_COURSE}. */
    static String owner(Stores stores, Optional<String> course) {
        boolean noneYet = course.isEmpty() && stores.courses().ids().isEmpty();
        return noneYet ? PolicyStore.EVERY_COURSE : CourseChoice.id(stores, course);
    }

    private static Problem unknown(PolicyCatalogue catalogue, String key) {
        List<String> like = catalogue.namesLike(key);
        Message advice = like.isEmpty()
                ? Message.of("try.unknownSetting")
                : Message.of("try.settingsLike", new Name(String.join(", ", like)));
        return Problem.of(
                Message.of("problem.unknownSetting", new Name(key)),
                Message.of("where.argument", new Name("KEY")),
                key,
                advice);
    }
}
