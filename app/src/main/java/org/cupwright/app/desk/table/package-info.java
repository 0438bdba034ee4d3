/** Tables as people and programs write them: lines, fields, and why one does not read. */
package org.cupwright.app.desk.table;
