package org.cupwright.app.desk;

/** The stores of one data folder within one transaction. */
public interface Stores {
    CourseStore courses();

    SurveyStore surveys();

    PolicyStore policies();

    PlanStore plans();
}
