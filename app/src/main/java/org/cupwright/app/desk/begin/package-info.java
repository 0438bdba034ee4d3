/** A club's first evening: from an empty folder to a course, step by step, each kept when it is done. */
package org.cupwright.app.desk.begin;
