package org.cupwright.app.storage;

/** The stores of one data folder within one transaction. */
public interface Stores {
    CourseStore courses();

    SurveyStore surveys();

    PolicyStore policies();

    PlanStore plans();

    FactStore facts();

    /** What need not be computed twice; not part of the transaction. */
    ResultCache cache();

    DrawnStore drawn();

    PhotoStore photos();
}
