/**
 * The eleven rules, a class each.
 *
 * <p>Keys of their sentences are {@code rule.ID.WHAT} with the rule's id. WHAT is {@code pass}, {@code caution}, {@code
 * fail} (the value keeps to, comes near to or breaks the limit), {@code check} (errors of measurement forbid a clear
 * answer: check with a level), {@code notChecked} (what the rule needs is not known here), {@code gap} (part of the
 * ground about the spot lies in a gap of the survey), {@code none} (there is nothing on the green to keep a distance
 * from), or one of a rule's own, named in its class. Arguments are the value and the limit, where there are such, in
 * that order.
 */
package org.cupwright.holelocation.rule;
