/** The course's settings: which there are, which count on a day, and changing them. */
package org.cupwright.app.desk.policy;
