/** A club's first evening by pages: from an empty data folder to tomorrow's papers in six steps. */
package org.cupwright.app.office.begin;
