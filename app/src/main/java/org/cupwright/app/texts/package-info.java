/**
 * Words: message files, one per language, and the rendering of the engine's keys and typed arguments as sentences in the reader's
 * language and units.
 *
 * <p>A language is added by adding a file {@code messages_xx.properties}; a key that it lacks is taken from English.
 */
package org.cupwright.app.texts;
