/**
 * What answers say: the words for facts, places, verdicts, plans, turf and weather, the same at every door. An answer
 * comes in {@link org.cupwright.app.answers.Lines}, which each door sets as it can.
 */
package org.cupwright.app.answers;
