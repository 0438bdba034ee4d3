/**
 * What every command has: its options and surroundings, JSON, problems told, and the words for days, places, positions,
 * entries and findings.
 */
package org.cupwright.app.cli.command;
