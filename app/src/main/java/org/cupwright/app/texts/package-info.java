/**
 * Words: message files, one per language, and the rendering of the engine's keys and typed arguments as sentences in
 * the reader's language and units.
 *
 * <p>A language is added by adding a file {@code messages_xx.properties} and its letters to
 * {@code DeskPolicy.LANGUAGES}; a key that it lacks is taken from English, and a test sees to it that none does.
 * That file speaks of no options, commands or forms. How one door words a sentence of its own stands under the same key
 * in {@code messages_xx.commands.properties}, {@code .pages.properties} or {@code .api.properties}, and goes first.
 */
package org.cupwright.app.texts;
