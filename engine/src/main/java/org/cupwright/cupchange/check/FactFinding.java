package org.cupwright.cupchange.check;

import java.util.UUID;
import org.cupwright.message.Message;

/**
 * Something about a fact that looks wrong. The fact stands; the person is asked.
 *
 * @param fact the fact
 * @param asks what to ask
 */
public record FactFinding(UUID fact, Message asks) {}
