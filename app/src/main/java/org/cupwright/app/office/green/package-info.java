/** One green on a day: its map, and every spot of it by every rule; and what whoever plans wants of it. */
package org.cupwright.app.office.green;
