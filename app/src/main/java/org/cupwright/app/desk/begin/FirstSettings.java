package org.cupwright.app.desk.begin;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.policy.ChangePolicy;
import org.cupwright.app.desk.policy.ChangePolicy.Wanted;
import org.cupwright.app.desk.policy.PolicyEntry;
import org.cupwright.app.desk.policy.Settings;
import org.cupwright.app.desk.policy.ShowPolicy;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.message.Problem;
import org.cupwright.policy.EnumNames;
import org.cupwright.rotation.RotationPolicy;
import org.cupwright.rotation.Scheme;

/** Fourth step: a dozen settings that a course decides first. */
public record FirstSettings(Session session) {
    /** Those that are asked about, with the values in force. */
    public List<PolicyEntry> asked() {
        SettingUp stands = new BeginCourse(session).stands();
        return show().decidedFirst(today(stands));
    }

    /**
     * Sets what is to be otherwise, from today on, with its lines of the audit trail.
     *
     * @param typed values by the keys of the settings; those that are missing stay
     * @throws WrongFields if a value is none
     */
    public void keep(Map<String, String> typed) {
        TypedFields fields = new TypedFields(typed);
        ChangePolicy change = new ChangePolicy(BeginCourse.ofNoCourse(session), Settings.catalogue());
        List<Wanted> wanted = new ArrayList<>();
        for (PolicyEntry entry : asked()) {
            String key = entry.setting().key();
            read(fields, key, key, change)
                    .filter(value -> !value.value().equals(entry.value()))
                    .ifPresent(wanted::add);
        }
        refuseAreas(fields);
        fields.check();
        session.decide(Right.SET, stores -> {
            SettingUp stands = BeginCourse.stands(stores);
            change.setIn(stores, today(stands), wanted);
            stores.setUp().add(stands.asDecided());
            return stands;
        });
    }

    /** Areas are drawn on greens that are there. */
    private static void refuseAreas(TypedFields fields) {
        String key = RotationPolicy.SCHEME.key();
        EnumNames.find(Scheme.class, fields.text(key))
                .filter(Scheme::goesByAreas)
                .ifPresent(scheme -> fields.refuse(key, Problem.of("begin.areasLater", key, fields.text(key))));
    }

    /** A setting's value as it is kept; empty where the field was not on the form, or its value is none. */
    static Optional<Wanted> read(TypedFields fields, String field, String key, ChangePolicy change) {
        if (!fields.has(field)) {
            return Optional.empty();
        }
        try {
            return Optional.of(change.read(new Wanted(key, fields.text(field))));
        } catch (Problem refused) {
            fields.refuse(field, refused);
            return Optional.empty();
        }
    }

    private LocalDate today(SettingUp stands) {
        return LocalDate.now(session.clock().withZone(stands.place().zone()));
    }

    private ShowPolicy show() {
        return new ShowPolicy(BeginCourse.ofNoCourse(session), Settings.catalogue());
    }
}
