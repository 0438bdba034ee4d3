package org.cupwright.app.office.log;

import java.util.Map;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.policy.EnumNames;

/** What people write down most, as a kind of entry with what it says already: our choice, the commonest first. */
enum Doing {
    AS_PLANNED("cupChanged"),
    ELSEWHERE("cupChanged"),
    LEFT("leftInOldHole"),
    SPEED("speedRead"),
    MOWN("maintained", Map.of("work", "mown-single")),
    WATERED("irrigated"),
    ROLLED("maintained", Map.of("work", "rolled")),
    CLOSED("groundMarked", Map.of("use", "closed")),
    ODD("somethingOdd"),
    NOTE("noteToNext");

    private final String kind;
    private final Map<String, String> says;

    Doing(String kind) {
        this(kind, Map.of());
    }

    Doing(String kind, Map<String, String> says) {
        this.kind = kind;
        this.says = says;
    }

    /** The kind of entry. */
    String kind() {
        return kind;
    }

    /** Parts that are said already, as they are typed. */
    Map<String, String> says() {
        return says;
    }

    /** Whether the plan says where. */
    boolean isAsPlanned() {
        return this == AS_PLANNED;
    }

    /** Its name among the words. */
    String key() {
        return EnumNames.lowerCamel(this);
    }

    /** Its name in addresses. */
    String address() {
        return LogProblems.typed(key());
    }
}
