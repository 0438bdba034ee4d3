/** Plans of many days as files for other programs: a calendar and a table. */
package org.cupwright.app.answers.files;
