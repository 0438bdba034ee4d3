/** Entries as JSON, the same in the store, in files and between devices. */
package org.cupwright.app.storage.json;
