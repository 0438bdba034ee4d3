package org.cupwright.app.desk;

import org.cupwright.app.desk.cache.ResultCache;
import org.cupwright.app.desk.drawn.DrawnStore;
import org.cupwright.app.desk.log.FactStore;
import org.cupwright.app.desk.log.PhotoStore;
import org.cupwright.app.desk.policy.PolicyStore;

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
