/**
 * What the engine has to say, without words: keys and typed arguments. Every package may use it; it uses none.
 */
package org.cupwright.message;
