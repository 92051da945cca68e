package org.tankrounds.migrations;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Whole folders: delete, give to another user, and make a rename last. */
final class Folders {

    private Folders() {
    }

    static void delete(Path folder) throws IOException {
        for (Path path : contents(folder).sorted(Comparator.reverseOrder()).toList()) {
            Files.deleteIfExists(path);
        }
    }

    /** Into a folder that exists and is empty; links stay links. */
    static void copy(Path from, Path to) throws IOException {
        for (Path path : contents(from).toList()) {
            if (!path.equals(from)) {
                Files.copy(path, to.resolve(from.relativize(path).toString()),
                        LinkOption.NOFOLLOW_LINKS, StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
    }

    static void giveTo(int uid, int gid, Path folder) throws IOException {
        for (Path path : contents(folder).toList()) {
            Files.setAttribute(path, "unix:uid", uid, LinkOption.NOFOLLOW_LINKS);
            Files.setAttribute(path, "unix:gid", gid, LinkOption.NOFOLLOW_LINKS);
        }
    }

    static int owner(Path path) throws IOException {
        return (Integer) Files.getAttribute(path, "unix:uid");
    }

    /** After a power cut a renamed file is only sure to be there when its folder was written out. */
    static void writeOut(Path folder) throws IOException {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }

    private static Stream<Path> contents(Path folder) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            List<Path> all = walk.toList();
            return all.stream();
        }
    }
}
