/** Papers for the morning. */
package org.cupwright.app.desk.paper;
