/** Ground that people drew or named as good or bad: kept, taken in from files, listed and taken back. */
package org.cupwright.app.desk.drawn;
