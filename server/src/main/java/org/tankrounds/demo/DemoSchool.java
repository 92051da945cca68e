package org.tankrounds.demo;

import java.util.List;

/** An invented school. */
record DemoSchool(String name, String place, double elevationM, List<DemoTank> tanks) {}
