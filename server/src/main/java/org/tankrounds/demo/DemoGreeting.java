package org.tankrounds.demo;

import java.io.PrintWriter;
import java.nio.file.Path;
import org.tankrounds.demo.DemoAccess.ChapterAccess;
import org.tankrounds.demo.DemoAccess.PersonAccess;

/** What the person who started the demo reads first. */
public final class DemoGreeting {
    private DemoGreeting() {}

    /** @param movedDays by how many days the story was moved to be of today */
    public static void print(DemoAccess access, Path directory, long movedDays, PrintWriter out) {
        out.println("The demo is at " + access.baseUrl() + " (stop it with Ctrl+C)");
        out.println();
        for (ChapterAccess chapter : access.chapters()) {
            out.println(chapter.name() + ", " + chapter.tanks().size() + " tanks");
            for (PersonAccess person : chapter.people()) {
                out.printf("  %-12s %-32s %s%n", person.role(), person.email(), person.password());
            }
            chapter.tanks().stream().filter(tank -> tank.classCard() != null).forEach(
                    tank -> out.printf("  %-12s %-32s %s%n", "class card", "/card", tank.classCard()));
            out.println();
        }
        out.println("Try this: sign in as the first coordinator and look at the rounds; then, in a second "
                + "browser,");
        out.println("as the first teacher, put a reading in and see its tank move.");
        out.println();
        if (movedDays > 0) {
            out.println("Its story was moved on by " + movedDays + (movedDays == 1 ? " day" : " days")
                    + ", with the readings that you had put in, so that it plays today.");
        }
        out.println("Everybody and everything in it is invented. It is kept in " + directory + ";");
        out.println("sign-ins and tokens stand in " + DemoAccessFile.NAME + " there. --fresh starts it over.");
        out.flush();
    }
}
