/** Greens as the desk sees them on a day: measured, with what lies on them, judged; a ball rolled on one. */
package org.cupwright.app.desk.green;
