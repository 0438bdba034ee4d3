/** The weeks: planned days beside each other, what is to be decided of them, and how they are planned and changed. */
package org.cupwright.app.office.weeks;
