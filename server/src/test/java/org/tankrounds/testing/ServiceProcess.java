package org.tankrounds.testing;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tankrounds.Main;

/**
 * The real service in a process of its own, for tests of what happens to it from outside: signals, crashes,
 * its log.
 */
public final class ServiceProcess implements AutoCloseable {
    private static final Pattern ADDRESS = Pattern.compile("http://[^\\s/]+");
    private static final long PATIENCE_SECONDS = 30;

    private final Process process;
    private final Path log;
    private final List<String> printed = new ArrayList<>();
    private final String baseUrl;

    private ServiceProcess(Process process, Path log) throws IOException {
        this.process = process;
        this.log = log;
        this.baseUrl = readAddress();
    }

    /** @param command as on the command line, such as serve and its options; a free port is taken */
    public static ServiceProcess start(Path folder, Map<String, String> environment, String... command)
            throws IOException {
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1", "-Xmx256m",
                "-Dtankrounds.unpacked-programs=" + TestDatabase.PROGRAMS,
                "-cp", System.getProperty("java.class.path"), Main.class.getName()));
        line.addAll(Arrays.asList(command));
        line.addAll(List.of("--port", "0", "--data", folder.resolve("data").toString()));
        Path log = folder.resolve("log-" + System.nanoTime());
        ProcessBuilder builder = new ProcessBuilder(line).redirectError(log.toFile());
        builder.environment().keySet().removeIf(name -> name.startsWith("TANKROUNDS_"));
        builder.environment().putAll(environment);
        return new ServiceProcess(builder.start(), log);
    }

    public String baseUrl() {
        return baseUrl;
    }

    public int port() {
        return Integer.parseInt(baseUrl.substring(baseUrl.lastIndexOf(':') + 1));
    }

    /** What it printed on standard output up to its address. */
    public List<String> printed() {
        return printed;
    }

    public String log() throws IOException {
        return Files.readString(log, StandardCharsets.UTF_8);
    }

    /** SIGTERM, as systemd or a keyboard would ask. */
    public void askToStop() {
        process.destroy();
    }

    /** kill -9. */
    public void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    public int awaitExit() throws InterruptedException {
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            throw new IllegalStateException("still running after " + PATIENCE_SECONDS + " s");
        }
        return process.exitValue();
    }

    /** The process id of its embedded PostgreSQL; 0 while it is coming up. */
    public static long postgresPid(Path folder) throws IOException {
        try {
            List<String> lines = Files.readAllLines(folder.resolve("data/postgresql/postmaster.pid"));
            return lines.isEmpty() ? 0 : Long.parseLong(lines.get(0).strip());
        } catch (NoSuchFileException notYet) {
            return 0;
        }
    }

    @Override
    public void close() throws InterruptedException {
        process.destroy();
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            kill();
        }
    }

    private String readAddress() throws IOException {
        BufferedReader out = new BufferedReader(
                new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            printed.add(line);
            Matcher address = ADDRESS.matcher(line);
            if (address.find()) {
                return address.group();
            }
        }
        throw new IllegalStateException("the service did not start: " + log());
    }
}
