package org.cupwright.app.desk.policy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine.About;
import org.cupwright.app.storage.PolicyStore;
import org.cupwright.app.storage.Stores;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Said;
import org.cupwright.message.Message.Translated;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;
import org.cupwright.policy.PolicyCatalogue;
import org.cupwright.policy.PolicyChange;
import org.cupwright.policy.Setting;
import org.cupwright.rotation.RotationPolicy;
import org.cupwright.rotation.SchemePolicy;
import org.cupwright.turf.TurfPolicy;
import org.cupwright.units.WrittenNumber;

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

    /** Settings that have to go together, and with what is drawn. */
    private static final String ROTATION = "rotation.";

    /** A key and the text of its new value. */
    public record Wanted(String key, String value) {}

    /** Checks all values first; then sets them from the day on. */
    public void set(LocalDate from, List<Wanted> wanted) {
        wanted.forEach(this::read);
        session.decide(Right.SET, stores -> setIn(stores, from, wanted));
    }

    /**
     * A value as it is kept.
     *
     * @throws Problem if it is none
     */
    public Wanted read(Wanted wanted) {
        return new Wanted(wanted.key(), change(LocalDate.EPOCH, wanted).value());
    }

    /** The same within a transaction of whoever has the right to set. */
    public String setIn(Stores stores, LocalDate from, List<Wanted> wanted) {
        List<PolicyChange> changes =
                wanted.stream().map(value -> change(from, value)).toList();
        String owner = PolicyKeys.owner(stores, session.course());
        changes.forEach(change -> keep(stores, owner, change));
        boolean ofSchemes = wanted.stream().anyMatch(value -> value.key().startsWith(ROTATION));
        if (ofSchemes && !owner.equals(PolicyStore.EVERY_COURSE)) {
            Policy then = stores.policies().history(owner).at(from);
            new SchemeChecks(then, session.course(stores), stores.drawn().of(owner)).check();
        }
        return owner;
    }

    /** The audit trail has what was in force on the day from which on the setting is another. */
    private void keep(Stores stores, String owner, PolicyChange change) {
        String before = value(
                stores.policies().history(owner).at(change.effective()), PolicyKeys.setting(catalogue, change.key()));
        stores.policies().add(owner, change);
        stores.audit()
                .add(session.did(
                        AuditKind.POLICY_CHANGED,
                        new About(owner, new Name(change.key())),
                        Optional.of(new Name(before)),
                        Optional.of(new Name(change.value()))));
    }

    private static <T> String value(Policy policy, Setting<T> setting) {
        return setting.type().write(policy.get(setting));
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

    /** Why a value is none, where its bounds alone do not say it. */
    private static Optional<Message> why(Setting<?> setting, String text) {
        if (setting == SchemePolicy.CHANGE_DAYS && text.isBlank()) {
            return Optional.of(Message.of("refused.noChangeDay"));
        }
        Optional<Double> number = WrittenNumber.find(text);
        if (setting.key().contains(".weight.")
                && number.filter(value -> value < 0).isPresent()) {
            return Optional.of(Message.of("refused.weight"));
        }
        boolean tooLong = setting.key().startsWith("turf.wearRest")
                && number.filter(value -> value > TurfPolicy.WEAR_REST_DAYS.defaultValue())
                        .isPresent();
        return tooLong ? Optional.of(Message.of("refused.rest")) : Optional.empty();
    }

    /** What nobody sees can turn round what stands beside it on paper; only letters are joined and parted by such. */
    private static boolean isSeen(int character) {
        return character == JOINER || character == NON_JOINER || !HIDDEN.contains((byte) Character.getType(character));
    }

    private static Message.Argument unit(Setting<?> setting) {
        return setting.unit().isEmpty() ? new Name("") : new Translated(setting.unitKey());
    }

    private static Problem refused(Setting<?> setting, String text, Message accepts) {
        Message refused = Message.of("problem.settingValue", new Name(setting.key()), new Name(text));
        return Problem.of(
                why(setting, text)
                        .map(why -> Message.of("problem.settingWhy", new Said(List.of(refused, why))))
                        .orElse(refused),
                Message.of("where.setting", new Name(setting.key())),
                text,
                Message.of("try.settingValue", new Said(accepts), unit(setting)));
    }
}
