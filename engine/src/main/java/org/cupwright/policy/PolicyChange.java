package org.cupwright.policy;

import java.time.LocalDate;

/**
 * A value set from a day on.
 *
 * @param effective the first day it counts
 * @param key the setting's key
 * @param value the value as text
 */
public record PolicyChange(LocalDate effective, String key, String value) {}
