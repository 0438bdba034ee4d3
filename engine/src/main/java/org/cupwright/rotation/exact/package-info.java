/**
 * Questions of yes and no, many of them at once, that are answered exactly: what is asked and who may answer it. Knows
 * nothing of golf, nor of the library that answers.
 */
package org.cupwright.rotation.exact;
