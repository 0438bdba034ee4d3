/** Files that people hand in and get: read with the reason where one cannot be, written whole or not at all. */
package org.cupwright.app.desk.files;
