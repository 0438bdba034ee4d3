package org.cupwright.app.texts;

/**
 * A length that is a round number in the reader's units.
 *
 * @param metres how long it is, m
 * @param says the same in words: {@code 15 ft}
 */
public record RoundLength(double metres, String says) {}
