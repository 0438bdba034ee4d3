/**
 * Paper: the changer's card and the hole location sheet, as PDF with embedded fonts, the same bytes for the same day.
 */
package org.cupwright.app.sheets;
