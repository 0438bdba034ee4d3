package org.cupwright.app.storage.training;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * Records of training. They are only ever added; a name in them is replaced where a person is erased. One that is there
 * already stays as it is.
 */
public interface TrainingStore {
    void add(TrainingRecord record);

    Optional<TrainingRecord> find(UUID id);

    /** Those that decide what people count as, in the order in which they came. */
    List<TrainingRecord> decisions();

    /** All of them, in the order in which they came. */
    List<TrainingRecord> all();
}
