/** Who asks for a page, about which course and day, in which words: settled before any page is made. */
package org.cupwright.app.visit;
