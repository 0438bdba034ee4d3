/** What is worked out before anybody asks for it, so that no page waits. */
package org.cupwright.app.office.ahead;
