package org.cupwright.app.desk.policy;

import java.util.List;
import org.cupwright.app.session.CourseChoice;
import org.cupwright.app.storage.PolicyStore;
import org.cupwright.app.storage.Stores;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.policy.PolicyCatalogue;
import org.cupwright.policy.PolicyHistory;
import org.cupwright.policy.Setting;

/** Which setting, and whose. */
public final class PolicyKeys {
    private PolicyKeys() {}

    static Setting<?> setting(PolicyCatalogue catalogue, String key) {
        return catalogue.find(key).orElseThrow(() -> unknown(catalogue, key));
    }

    /** The course whose settings are meant; before there is any course, {@link PolicyStore#EVERY_COURSE}. */
    static String owner(Stores stores, CourseChoice course) {
        boolean noneYet = course.id().isEmpty() && stores.courses().ids().isEmpty();
        return noneYet ? PolicyStore.EVERY_COURSE : course.idIn(stores);
    }

    /** The settings of the course that is meant; before there is any course, those for every course. */
    public static PolicyHistory history(Stores stores, CourseChoice course) {
        return stores.policies().history(owner(stores, course));
    }

    private static Problem unknown(PolicyCatalogue catalogue, String key) {
        List<String> like = catalogue.namesLike(key);
        Message advice = like.isEmpty()
                ? Message.of("try.unknownSetting")
                : Message.of("try.settingsLike", new Name(String.join(", ", like)));
        return Problem.of(Message.of("problem.unknownSetting", new Name(key)), "setting", key, advice);
    }
}
