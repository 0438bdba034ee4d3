package org.cupwright.app.desk.ground;

import java.util.List;
import org.cupwright.course.Hole;
import org.cupwright.message.Message;

/**
 * What a drawing changes.
 *
 * @param was the hole before
 * @param is the hole then
 * @param says what is drawn and how large it is, before and after
 * @param doubtful what looks wrong about it and may be right
 * @param holes old holes that lie off the green then
 * @param plans holes of coming days that lie off the green or too near to an edge then
 */
public record GroundChange(
        Hole was, Hole is, List<Message> says, List<Message> doubtful, List<Message> holes, List<Message> plans) {
    public GroundChange {
        says = List.copyOf(says);
        doubtful = List.copyOf(doubtful);
        holes = List.copyOf(holes);
        plans = List.copyOf(plans);
    }
}
