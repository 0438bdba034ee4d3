/** What has to be known before anybody goes out. */
package org.cupwright.app.desk.first;
