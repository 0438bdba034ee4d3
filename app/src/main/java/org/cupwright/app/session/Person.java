package org.cupwright.app.session;

/**
 * Somebody who asks or says something.
 *
 * @param name as it stands beside what that person says; empty where nobody knows
 * @param role what the person may do
 */
public record Person(String name, Role role) {}
