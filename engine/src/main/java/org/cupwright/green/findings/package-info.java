/**
 * What is doubtful about the ground of a green: where its survey is thin, wrong or contradicted, and what to do about
 * it.
 */
package org.cupwright.green.findings;
