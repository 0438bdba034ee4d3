/** What is measured at one spot of a green, and at all of them, before any rule is asked. */
package org.cupwright.holelocation.spot;
