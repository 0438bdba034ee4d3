/** Values over a green, and the parts of it where they are large. */
package org.cupwright.green.field;
