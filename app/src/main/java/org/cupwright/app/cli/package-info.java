/**
 * The commands: options in, words or one JSON document out, exit statuses. What a command does is app.desk's business.
 */
package org.cupwright.app.cli;
