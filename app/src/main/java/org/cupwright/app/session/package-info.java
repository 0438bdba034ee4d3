/** Who asks, for which course and by what right: settled once where a request comes in, before any use case sees it. */
package org.cupwright.app.session;
