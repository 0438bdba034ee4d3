package org.cupwright.formats.table;

import org.cupwright.message.Message;

/**
 * Something about a whole table that looks wrong and may be right.
 *
 * @param about the word by which it is accepted
 * @param asks what looks wrong, with the value
 * @param tryThis what to try, and how to say that it is right
 */
public record Question(String about, Message asks, Message tryThis) {}
