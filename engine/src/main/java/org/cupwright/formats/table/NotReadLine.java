package org.cupwright.formats.table;

import org.cupwright.message.Message;

/** A line that does not read: its number in the file, what it says, why it does not, and what to try. */
public record NotReadLine(long number, String text, Message why, Message tryThis) {}
