package org.cupwright.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.plan.PublishPlan;
import org.cupwright.app.desk.plan.PublishPlan.Step;
import org.cupwright.app.desk.policy.ChangePolicy;
import org.cupwright.app.desk.policy.ChangePolicy.Wanted;
import org.cupwright.app.desk.policy.Settings;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine;
import org.cupwright.app.storage.AuditLine.About;
import org.cupwright.app.storage.AuditLine.Who;
import org.cupwright.app.storage.FactStore;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Settings and published plans leave a line of who changed them, with the change or not at all. */
class AuditOfDeskTest {
    @TempDir
    Path files;

    private SqliteFolder folder;
    private Session ida;

    @BeforeEach
    void open() {
        MadeDesk.make(files);
        folder = new SqliteFolder(files, MadeDesk.CLOCK);
        ida = MadeDesk.asking(folder, "Ida", Role.SUPERINTENDENT);
    }

    @AfterEach
    void close() {
        folder.close();
    }

    private List<AuditLine> lines() {
        List<AuditLine> all = folder.read(stores -> stores.audit().between(FactStore.LONG_AGO, FactStore.LONG_HENCE));
        return all.stream()
                .filter(line -> !line.by().name().equals("the maker"))
                .toList();
    }

    private void set(String value) {
        new ChangePolicy(ida, Settings.catalogue()).set(MadeDesk.DAY, List.of(new Wanted("desk.units", value)));
    }

    @Test
    void aSettingWithWhatItWasBefore() {
        set("imperial");
        set("metric");
        assertThat(lines()).hasSize(2);
        AuditLine second = lines().get(1);
        assertThat(second.what()).isEqualTo(AuditKind.POLICY_CHANGED);
        assertThat(second.by()).isEqualTo(new Who(Optional.empty(), "Ida"));
        assertThat(second.about()).isEqualTo(new About(MadeDesk.COURSE, new Name("desk.units")));
        assertThat(second.before()).contains(new Name("imperial"));
        assertThat(second.after()).contains(new Name("metric"));
    }

    @Test
    void whatIsRefusedLeavesNoLine() {
        assertThatThrownBy(() -> set("furlongs")).isInstanceOf(Problem.class);
        Session reader = MadeDesk.asking(folder, "Kim", Role.READER);
        assertThatThrownBy(() -> new PublishPlan(reader).take(Step.PUBLISH, Optional.of(MadeDesk.DAY), true))
                .isInstanceOf(Problem.class);
        assertThat(lines()).isEmpty();
    }

    @Test
    void aPlanThatIsPublishedAndWithdrawn() {
        PublishPlan publish = new PublishPlan(ida);
        publish.take(Step.PUBLISH, Optional.of(MadeDesk.DAY), true);
        publish.take(Step.PUBLISH, Optional.of(MadeDesk.DAY), true);
        publish.take(Step.WITHDRAW, Optional.of(MadeDesk.DAY), true);
        publish.publish(publish.standing(Optional.of(MadeDesk.DAY)));
        assertThat(lines())
                .extracting(AuditLine::what)
                .containsExactly(AuditKind.PLAN_PUBLISHED, AuditKind.PLAN_WITHDRAWN, AuditKind.PLAN_PUBLISHED);
        assertThat(lines().get(0).about()).isEqualTo(new About(MadeDesk.COURSE, new Day(MadeDesk.DAY)));
    }
}
