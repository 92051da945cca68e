package org.tankrounds.people;

import java.time.ZoneId;

/** A volunteer chapter. */
public record Chapter(int chapterId, String code, String name, ZoneId zone) {}
