package org.tankrounds.demo;

/** An invented adult who signs in. */
record DemoPerson(String name, String email, String role) {}
