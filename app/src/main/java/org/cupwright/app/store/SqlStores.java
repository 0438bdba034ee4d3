package org.cupwright.app.store;

import java.time.Clock;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import org.cupwright.app.storage.AuditStore;
import org.cupwright.app.storage.CourseStore;
import org.cupwright.app.storage.DamagedRow;
import org.cupwright.app.storage.DrawnStore;
import org.cupwright.app.storage.FactStore;
import org.cupwright.app.storage.PeopleStore;
import org.cupwright.app.storage.PhoneStore;
import org.cupwright.app.storage.PhotoStore;
import org.cupwright.app.storage.PlanStore;
import org.cupwright.app.storage.PolicyStore;
import org.cupwright.app.storage.ResultCache;
import org.cupwright.app.storage.RoundStore;
import org.cupwright.app.storage.SetUpStore;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.SurveyStore;
import org.cupwright.app.storage.Versions;
import org.cupwright.app.storage.Versions.Part;
import org.cupwright.app.storage.training.TrainingStore;

/** The stores of one transaction. */
public record SqlStores(Sql sql, Dialect dialect, ResultCache cache, Clock clock, Set<DamagedRow> leftOut)
        implements Stores {
    @Override
    public CourseStore courses() {
        return new SqlCourses(new CourseDocuments(sql, clock, "course_version"));
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
    public RoundStore rounds() {
        return new SqlRounds(sql, clock);
    }

    @Override
    public DrawnStore drawn() {
        return new SqlDrawn(new CourseDocuments(sql, clock, "drawn_version"));
    }

    @Override
    public SetUpStore setUp() {
        return new SqlSetUp(new CourseDocuments(sql, clock, "set_up_version"));
    }

    @Override
    public FactStore facts() {
        return new SqlFacts(sql, dialect, clock, leftOut);
    }

    @Override
    public PhotoStore photos() {
        return new SqlPhotos(sql, dialect, clock);
    }

    @Override
    public PeopleStore people() {
        return new SqlPeople(sql);
    }

    @Override
    public AuditStore audit() {
        return new SqlAudit(sql);
    }

    @Override
    public PhoneStore phones() {
        return new SqlPhones(sql);
    }

    @Override
    public TrainingStore training() {
        return new SqlTraining(sql, dialect, clock);
    }

    /** Every part's newest row, by an index. */
    @Override
    public Versions versions(String courseId, LocalDate day) {
        Map<Part, Long> newest = new EnumMap<>(Part.class);
        newest.put(Part.COURSE, newest("id", "course_version WHERE course = ?", courseId));
        newest.put(Part.SURVEYS, newest("id", "survey_version WHERE course = ?", courseId));
        newest.put(Part.LEVELS, newest("id", "levels_version WHERE course = ?", courseId));
        newest.put(Part.DRAWN, newest("id", "drawn_version WHERE course = ?", courseId));
        newest.put(Part.POLICY, newest("id", "policy_change WHERE course IN ('', ?)", courseId));
        newest.put(Part.PLAN, newest("id", "plan_version WHERE course = ? AND day = ?", courseId, day.toString()));
        newest.put(Part.ROUND, newest("id", "round_version WHERE course = ? AND day = ?", courseId, day.toString()));
        newest.put(Part.LOGBOOK, newest("received", "fact"));
        return new Versions(newest);
    }

    private long newest(String number, String rows, Object... arguments) {
        return sql.number("SELECT coalesce(max(" + number + "), 0) FROM " + rows, arguments);
    }
}
