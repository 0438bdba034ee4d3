package org.cupwright.app.store;

import java.util.Optional;
import org.cupwright.app.storage.SetUpStore;
import org.cupwright.app.storage.SettingUp;

record SqlSetUp(CourseDocuments documents) implements SetUpStore {
    private static final String NO_COURSE_YET = "";

    @Override
    public Optional<SettingUp> find() {
        return documents.newest(NO_COURSE_YET, SettingUp.class);
    }

    @Override
    public void add(SettingUp stands) {
        documents.add(NO_COURSE_YET, stands);
    }
}
