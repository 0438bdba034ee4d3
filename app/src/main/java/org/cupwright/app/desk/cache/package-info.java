/** What need not be computed twice: kept beside the data, and made anew whenever it is missing or no longer fits. */
package org.cupwright.app.desk.cache;
