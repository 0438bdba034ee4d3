package org.cupwright.app.store;

import java.time.Clock;
import org.cupwright.app.desk.CourseStore;
import org.cupwright.app.desk.PlanStore;
import org.cupwright.app.desk.Stores;
import org.cupwright.app.desk.SurveyStore;
import org.cupwright.app.desk.cache.ResultCache;
import org.cupwright.app.desk.drawn.DrawnStore;
import org.cupwright.app.desk.log.FactStore;
import org.cupwright.app.desk.log.PhotoStore;
import org.cupwright.app.desk.policy.PolicyStore;

/** The stores of one transaction. */
final class SqlStores implements Stores {
    private final Sql sql;
    private final ResultCache cache;
    private final Clock clock;

    SqlStores(Sql sql, ResultCache cache, Clock clock) {
        this.sql = sql;
        this.cache = cache;
        this.clock = clock;
    }

    @Override
    public CourseStore courses() {
        return new SqlCourses(sql, clock);
    }

    @Override
    public SurveyStore surveys() {
        return new SqlSurveys(sql, clock);
    }

    @Override
    public PolicyStore policies() {
        return new SqlPolicies(sql, clock);
    }

    @Override
    public PlanStore plans() {
        return new SqlPlans(sql, clock);
    }

    @Override
    public DrawnStore drawn() {
        return new SqlDrawn(sql, clock);
    }

    @Override
    public FactStore facts() {
        return new SqlFacts(sql, clock);
    }

    @Override
    public PhotoStore photos() {
        return new SqlPhotos(sql, clock);
    }

    @Override
    public ResultCache cache() {
        return cache;
    }
}
