/**
 * The page that a changer carries round: a day is loaded once and kept on the phone, what is done there is kept there
 * too until it was sent, and each entry arrives once.
 */
package org.cupwright.app.field;
