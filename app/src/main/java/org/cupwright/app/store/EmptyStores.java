package org.cupwright.app.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.cupwright.app.storage.CourseStore;
import org.cupwright.app.storage.DrawnOnCourse;
import org.cupwright.app.storage.DrawnStore;
import org.cupwright.app.storage.FactStore;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.LevelSpots;
import org.cupwright.app.storage.Photo;
import org.cupwright.app.storage.PhotoStore;
import org.cupwright.app.storage.PlanStore;
import org.cupwright.app.storage.PolicyStore;
import org.cupwright.app.storage.ResultCache;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.SurveyStore;
import org.cupwright.app.storage.SurveyVersion;
import org.cupwright.course.Course;
import org.cupwright.cupchange.Fact;
import org.cupwright.policy.PolicyChange;
import org.cupwright.policy.PolicyHistory;

/** The stores of a folder that holds nothing, so that looking into it makes no file. */
final class EmptyStores implements Stores {
    @Override
    public CourseStore courses() {
        return new CourseStore() {
            @Override
            public List<String> ids() {
                return List.of();
            }

            @Override
            public Optional<Course> find(String id) {
                return Optional.empty();
            }

            @Override
            public void add(Course course) {
                throw onlyRead();
            }
        };
    }

    @Override
    public SurveyStore surveys() {
        return new SurveyStore() {
            @Override
            public Optional<GreenSurvey> find(String courseId, String holeId) {
                return Optional.empty();
            }

            @Override
            public List<SurveyVersion> versions(String courseId, String holeId) {
                return List.of();
            }

            @Override
            public Optional<GreenSurvey> find(String courseId, String holeId, SurveyVersion version) {
                return Optional.empty();
            }

            @Override
            public Set<String> surveyed(String courseId) {
                return Set.of();
            }

            @Override
            public void add(String courseId, GreenSurvey survey) {
                throw onlyRead();
            }

            @Override
            public LevelSpots levels(String courseId) {
                return LevelSpots.none();
            }

            @Override
            public LevelSpots levelsBefore(String courseId, Instant moment) {
                return LevelSpots.none();
            }

            @Override
            public void addLevels(String courseId, LevelSpots spots) {
                throw onlyRead();
            }
        };
    }

    @Override
    public PolicyStore policies() {
        return new PolicyStore() {
            @Override
            public PolicyHistory history(String courseId) {
                return PolicyHistory.empty();
            }

            @Override
            public void add(String courseId, PolicyChange change) {
                throw onlyRead();
            }
        };
    }

    @Override
    public PlanStore plans() {
        return new PlanStore() {
            @Override
            public Optional<StoredPlan> find(String courseId, LocalDate day) {
                return Optional.empty();
            }

            @Override
            public List<StoredPlan> between(String courseId, LocalDate first, LocalDate last) {
                return List.of();
            }

            @Override
            public List<LocalDate> days(String courseId, int atMost) {
                return List.of();
            }

            @Override
            public void add(StoredPlan plan) {
                throw onlyRead();
            }
        };
    }

    @Override
    public DrawnStore drawn() {
        return new DrawnStore() {
            @Override
            public DrawnOnCourse of(String courseId) {
                return DrawnOnCourse.none();
            }

            @Override
            public void add(String courseId, DrawnOnCourse all) {
                throw onlyRead();
            }
        };
    }

    @Override
    public FactStore facts() {
        return new FactStore() {
            @Override
            public Kept add(Fact fact) {
                throw onlyRead();
            }

            @Override
            public Optional<Fact> find(UUID id) {
                return Optional.empty();
            }

            @Override
            public List<Fact> all(String courseId) {
                return List.of();
            }

            @Override
            public List<UUID> ids(String courseId, String start) {
                return List.of();
            }

            @Override
            public List<Fact> between(String courseId, Instant from, Instant before) {
                return List.of();
            }

            @Override
            public List<Fact> ofKinds(String courseId, Set<String> kinds, Instant from, Instant before) {
                return List.of();
            }

            @Override
            public Optional<Instant> first(String courseId) {
                return Optional.empty();
            }

            @Override
            public Optional<Arrival> lastArrival() {
                return Optional.empty();
            }

            @Override
            public boolean isUnchangedBefore(String courseId, Instant moment, Arrival since) {
                return false;
            }
        };
    }

    @Override
    public PhotoStore photos() {
        return new PhotoStore() {
            @Override
            public void add(Photo photo) {
                throw onlyRead();
            }

            @Override
            public Optional<Photo> find(String hash) {
                return Optional.empty();
            }
        };
    }

    @Override
    public ResultCache cache() {
        return new ResultCache() {
            @Override
            public Optional<byte[]> find(String name) {
                return Optional.empty();
            }

            @Override
            public void keep(String name, byte[] result) {
                // a folder that holds nothing is left as it is
            }
        };
    }

    private static UnsupportedOperationException onlyRead() {
        return new UnsupportedOperationException("reading only");
    }
}
