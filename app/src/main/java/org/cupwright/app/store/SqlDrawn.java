package org.cupwright.app.store;

import org.cupwright.app.storage.DrawnOnCourse;
import org.cupwright.app.storage.DrawnStore;

record SqlDrawn(CourseDocuments documents) implements DrawnStore {
    @Override
    public DrawnOnCourse of(String courseId) {
        return documents.newest(courseId, DrawnOnCourse.class).orElse(DrawnOnCourse.none());
    }

    @Override
    public void add(String courseId, DrawnOnCourse all) {
        documents.add(courseId, all);
    }
}
