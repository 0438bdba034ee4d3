/** Commands that take in courses and surveys, compare surveys, and say what is doubtful about the ground. */
package org.cupwright.app.cli.survey;
