package org.cupwright.app.desk.policy;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Said;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;
import org.cupwright.policy.PolicyCatalogue;
import org.cupwright.policy.PolicyChange;
import org.cupwright.policy.Setting;
import org.cupwright.rotation.RotationPolicy;

/** Sets settings from a day on, all of them or none. */
public record ChangePolicy(Session session, PolicyCatalogue catalogue) {
    private static final int NON_JOINER = 0x200C;
    private static final int JOINER = 0x200D;
    private static final Set<Byte> HIDDEN = Set.of(
            Character.CONTROL,
            Character.FORMAT,
            Character.LINE_SEPARATOR,
            Character.PARAGRAPH_SEPARATOR,
            Character.SURROGATE);

    /** A key and the text of its new value. */
    public record Wanted(String key, String value) {}

    /** Checks all values first; then sets them from the day on. */
    public void set(LocalDate from, List<Wanted> wanted) {
        List<PolicyChange> changes =
                wanted.stream().map(value -> change(from, value)).toList();
        session.decide(Right.SET, stores -> {
            String owner = PolicyKeys.owner(stores, session.course());
            changes.forEach(change -> stores.policies().add(owner, change));
            return owner;
        });
    }

    private PolicyChange change(LocalDate from, Wanted wanted) {
        Setting<?> setting = PolicyKeys.setting(catalogue, wanted.key());
        String value = normal(setting, wanted.value());
        if (setting == DeskPolicy.LANGUAGE && !DeskPolicy.LANGUAGES.contains(value)) {
            Name all = new Name(String.join(", ", DeskPolicy.LANGUAGES));
            throw refused(setting, value, Message.of("accepts.oneOf", all));
        }
        if (setting == RotationPolicy.THIRDS_ALLOWED && value.isEmpty()) {
            Name all = new Name(PolicyEntry.of(setting, Policy.defaults()).defaultText());
            throw refused(setting, wanted.value(), Message.of("accepts.someOf", all));
        }
        return new PolicyChange(from, setting.key(), value);
    }

    private static <T> String normal(Setting<T> setting, String text) {
        return setting.type()
                .read(text)
                .filter(value -> text.codePoints().allMatch(ChangePolicy::isSeen))
                .map(setting.type()::write)
                .orElseThrow(() -> refused(setting, text, setting.type().accepts()));
    }

    /** What nobody sees can turn round what stands beside it on paper; only letters are joined and parted by such. */
    private static boolean isSeen(int character) {
        return character == JOINER || character == NON_JOINER || !HIDDEN.contains((byte) Character.getType(character));
    }

    private static Problem refused(Setting<?> setting, String text, Message accepts) {
        return Problem.of(
                Message.of("problem.settingValue", new Name(setting.key()), new Name(text)),
                Message.of("where.setting", new Name(setting.key())),
                text,
                Message.of("try.settingValue", new Said(accepts), new Name(setting.unit())));
    }
}
