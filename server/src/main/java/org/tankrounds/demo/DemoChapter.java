package org.tankrounds.demo;

import java.util.List;

/** An invented chapter; its people in the order coordinator, mentor, teachers. */
record DemoChapter(String code, String name, List<DemoPerson> people, List<DemoSchool> schools) {

    List<DemoPerson> teachers() {
        return people.stream().filter(person -> person.role().equals("teacher")).toList();
    }

    List<DemoTank> tanks() {
        return schools.stream().flatMap(school -> school.tanks().stream()).toList();
    }
}
