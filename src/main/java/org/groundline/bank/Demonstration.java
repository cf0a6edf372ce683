package org.groundline.bank;

/// A thing that a student shows and an instructor observes, by the criteria.
///
/// @param neverOverridable whether no sign-off may go without it
public record Demonstration(String id, String title, String criteria, boolean neverOverridable) {}
