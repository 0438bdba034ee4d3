package org.cupwright.holelocation.rule;

import org.cupwright.holelocation.RuleResult;

/** One rule, for one green and day. Safe for use by several threads. */
public interface Rule {
    RuleResult judge(JudgedPosition judged);
}
