package org.cupwright.app.storage;

import java.time.LocalDate;
import org.cupwright.app.storage.training.TrainingStore;

/** The stores of one data folder within one transaction. */
public interface Stores {
    CourseStore courses();

    SurveyStore surveys();

    PolicyStore policies();

    PlanStore plans();

    RoundStore rounds();

    FactStore facts();

    /** What need not be computed twice; not part of the transaction. */
    ResultCache cache();

    DrawnStore drawn();

    SetUpStore setUp();

    PhotoStore photos();

    PeopleStore people();

    AuditStore audit();

    PhoneStore phones();

    TrainingStore training();

    /** How far what is kept of a course has come, and the plan of a day among it. */
    Versions versions(String courseId, LocalDate day);
}
