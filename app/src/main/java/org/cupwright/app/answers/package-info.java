/** What answers say: the words for facts, places, verdicts, plans, turf and weather, the same at every door. */
package org.cupwright.app.answers;
