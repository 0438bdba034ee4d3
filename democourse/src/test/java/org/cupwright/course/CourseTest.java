package org.cupwright.course;

import static org.assertj.core.api.Assertions.assertThat;

import org.cupwright.democourse.DemoCourse;
import org.junit.jupiter.api.Test;

class CourseTest {
    private static final Course COURSE = new DemoCourse(1).course();

    @Test
    void theHolesOfADoubleGreenKnowEachOther() {
        Hole ninth = COURSE.find("9").orElseThrow();
        Hole last = COURSE.find("18").orElseThrow();
        assertThat(COURSE.sharingGreenWith(ninth)).containsExactly(last);
        assertThat(COURSE.sharingGreenWith(last)).containsExactly(ninth);
    }

    @Test
    void aGreenOfOneHoleIsSharedWithNone() {
        for (Hole hole : COURSE.holes()) {
            if (!hole.id().equals("9") && !hole.id().equals("18")) {
                assertThat(COURSE.sharingGreenWith(hole)).as(hole.id()).isEmpty();
            }
        }
    }
}
