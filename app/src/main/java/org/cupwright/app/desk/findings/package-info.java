/** What is doubtful about the ground of a course's greens. */
package org.cupwright.app.desk.findings;
