/** What people note of a green themselves, read from files: slopes read with a level, and what lies on its ground. */
package org.cupwright.formats.items;
