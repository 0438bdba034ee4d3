package org.cupwright.rotation.weeks;

import org.cupwright.rotation.candidate.Candidate;

/**
 * Where a hole of a coming day stands in a plan.
 *
 * @param spot the spot, judged as it is now with nothing lying on the green
 * @param setAside whether a rule was set aside for it when it was planned: it is not moved for that rule alone
 */
public record Stand(Candidate spot, boolean setAside) {}
