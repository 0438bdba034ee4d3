/** Every rule at one position or at every cell of a green, and what is set aside where nothing passes. */
package org.cupwright.holelocation.judging;
