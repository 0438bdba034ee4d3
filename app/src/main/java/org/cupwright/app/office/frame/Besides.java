package org.cupwright.app.office.frame;

import java.util.Set;
import org.cupwright.message.Message;

/** What has to be known of what a page was made from, where that was read apart from its visit: as {@code besides}. */
public record Besides(Set<Message> remarks) {
    static final String NAME = "besides";

    public Besides {
        remarks = Set.copyOf(remarks);
    }
}
