/** Courses, surveys and readings taken in from files, and the invented course. */
package org.cupwright.app.desk.intake;
