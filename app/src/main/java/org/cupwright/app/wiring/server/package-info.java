/** The server: an application context with the pages, and who guards the doors. */
package org.cupwright.app.wiring.server;
