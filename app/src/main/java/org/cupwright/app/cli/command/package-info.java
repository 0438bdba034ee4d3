/** What every command has: its options and surroundings, its answer printed as lines or JSON, and problems told. */
package org.cupwright.app.cli.command;
