package org.cupwright.app.answers.json;

import java.util.UUID;
import org.cupwright.app.people.Account;
import org.cupwright.app.people.Erase.Erased;
import org.cupwright.app.people.ListAudit.Trail;
import org.cupwright.app.people.ListPeople.Everybody;
import org.cupwright.app.people.NewCode;
import org.cupwright.app.storage.AuditLine;
import org.cupwright.app.texts.Texts;
import tools.jackson.databind.JsonNode;

/** Who may sign in and who changed what, as scripts read it. */
public final class PeopleJson {
    private final Shapes shapes;

    public PeopleJson(Texts texts) {
        this.shapes = new Shapes(texts)
                .as(UUID.class, UUID::toString)
                .as(Account.class, PeopleJson::shape)
                .as(AuditLine.class, PeopleJson::shape);
    }

    public JsonNode list(Everybody all) {
        return shapes.tree(new Shape().with("people", all.people()).with("invited", all.invited()));
    }

    /** The one time that the code is said. */
    public JsonNode invited(NewCode made) {
        return shapes.tree(new Shape()
                .with("name", made.name())
                .with("role", made.role())
                .with("code", made.code())
                .with("until", made.until()));
    }

    public JsonNode account(Account account) {
        return shapes.tree(account);
    }

    public JsonNode erased(Erased erased) {
        return shapes.tree(shape(erased.account()).with("rows", erased.rows()));
    }

    public JsonNode audit(Trail trail) {
        return shapes.tree(new Shape().with("lines", trail.lines()));
    }

    private static Shape shape(Account account) {
        return new Shape()
                .with("id", account.id())
                .with("name", account.name())
                .with("role", account.role())
                .with("active", account.active())
                .with("madeAt", account.madeAt());
    }

    private static Shape shape(AuditLine line) {
        return new Shape()
                .with("at", line.at())
                .with("by", line.by().name())
                .with("byId", line.by().id())
                .with("what", line.what())
                .with("course", line.about().course())
                .with("about", line.about().thing())
                .with("aboutId", line.about().person())
                .with("before", line.before())
                .with("after", line.after());
    }
}
