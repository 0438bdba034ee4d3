/** The course: what is known of its greens, its settings, and the files that bring more. */
package org.cupwright.app.office.course;
