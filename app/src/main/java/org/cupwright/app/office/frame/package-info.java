/** What every page has: where one can go, who is here, the words; and the pages for what went wrong. */
package org.cupwright.app.office.frame;
