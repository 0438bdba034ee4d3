package org.cupwright.app.store;

import java.time.Clock;
import java.time.LocalDate;
import org.cupwright.app.storage.CourseStore;
import org.cupwright.app.storage.DrawnStore;
import org.cupwright.app.storage.FactStore;
import org.cupwright.app.storage.PhotoStore;
import org.cupwright.app.storage.PlanStore;
import org.cupwright.app.storage.PolicyStore;
import org.cupwright.app.storage.ResultCache;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.SurveyStore;
import org.cupwright.app.storage.Versions;

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
    public Versions versions(String courseId, LocalDate day) {
        return new SqlVersions(sql).of(courseId, day);
    }

    @Override
    public ResultCache cache() {
        return cache;
    }
}
