/**
 * Work that takes longer than a page may: it goes on in the background, tells how far it has come, and can be stopped.
 */
package org.cupwright.app.office.work;
