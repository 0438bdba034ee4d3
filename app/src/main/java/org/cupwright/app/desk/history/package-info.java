/** What a long logbook comes to, folded from kept states instead of from its first day. */
package org.cupwright.app.desk.history;
