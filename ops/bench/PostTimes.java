import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Posts readings to a running demo one after another, and waits each time until the rounds have changed. */
final class PostTimes {
    private static final int FIRST_ONES_LEFT_OUT = 50;
    private static final long PAUSE_NANOS = 2_000_000;
    private static final int GIVE_UP_MS = 10_000;
    private static final Pattern TANK =
            Pattern.compile("\"code\"\\s*:\\s*\"([^\"]+)\"[^{}]*?\"token\"\\s*:\\s*\"([^\"]+)\"");

    private final HttpClient http = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final String baseUrl;
    private final String chapterToken;
    private final List<String[]> tanks = new ArrayList<>();

    private PostTimes(String access) {
        baseUrl = first(access, "baseUrl");
        chapterToken = first(access, "chapterToken");
        String firstChapter = access.substring(0, access.indexOf("\"tanks\"") + end(access));
        for (Matcher tank = TANK.matcher(firstChapter); tank.find();) {
            tanks.add(new String[] {tank.group(1), tank.group(2)});
        }
    }

    /** @param arguments the demo's demo-access.json; how many readings */
    public static void main(String[] arguments) throws Exception {
        int readings = Integer.parseInt(arguments[1]);
        new PostTimes(Files.readString(Path.of(arguments[0]))).measure(readings);
    }

    private static int end(String access) {
        return access.substring(access.indexOf("\"tanks\"")).indexOf(']');
    }

    private static String first(String access, String name) {
        Matcher value = Pattern.compile("\"" + name + "\"\\s*:\\s*\"([^\"]+)\"").matcher(access);
        if (!value.find()) {
            throw new IllegalArgumentException("the access file has no " + name);
        }
        return value.group(1);
    }

    private void measure(int readings) throws Exception {
        double[] answered = new double[readings];
        double[] renewed = new double[readings];
        String etag = rounds("").headers().firstValue("ETag").orElseThrow();
        for (int i = -FIRST_ONES_LEFT_OUT; i < readings; i++) {
            long from = System.nanoTime();
            post(tanks.get(Math.floorMod(i, tanks.size())), 10 + Math.floorMod(i, 20) / 10.0);
            long stored = System.nanoTime();
            etag = changed(etag);
            if (i >= 0) {
                answered[i] = (stored - from) / 1e6;
                renewed[i] = (System.nanoTime() - stored) / 1e6;
            }
        }
        tell("posted reading answered", answered);
        tell("forecast new after the answer", renewed);
    }

    private void post(String[] tank, double temperatureC) throws IOException, InterruptedException {
        String body = String.format(Locale.ROOT, "{\"measuredAt\":\"%s\",\"values\":"
                + "[{\"analyte\":\"temperature\",\"value\":%.1f,\"unit\":\"Cel\",\"step\":0.1}]}",
                Instant.now(), temperatureC);
        HttpResponse<String> answer = http.send(to("/api/v1/tanks/" + tank[0] + "/readings", tank[1])
                .header("Content-Type", "application/json").header("Idempotency-Key", UUID.randomUUID().toString())
                .POST(BodyPublishers.ofString(body)).build(), BodyHandlers.ofString());
        if (answer.statusCode() != 201) {
            throw new IOException("a reading was answered with " + answer.statusCode() + ": " + answer.body());
        }
    }

    /** Asks again and again, with a pause: the time is known to that and an answer's. */
    private String changed(String etag) throws IOException, InterruptedException {
        long until = System.nanoTime() + GIVE_UP_MS * 1_000_000L;
        while (System.nanoTime() < until) {
            HttpResponse<String> answer = rounds(etag);
            if (answer.statusCode() == 200) {
                return answer.headers().firstValue("ETag").orElseThrow();
            }
            LockSupport.parkNanos(PAUSE_NANOS);
        }
        throw new IOException("the rounds did not change within " + GIVE_UP_MS + " ms");
    }

    private HttpResponse<String> rounds(String etag) throws IOException, InterruptedException {
        HttpRequest.Builder request = to("/api/v1/rounds?limit=1", chapterToken);
        if (!etag.isEmpty()) {
            request.header("If-None-Match", etag);
        }
        return http.send(request.build(), BodyHandlers.ofString());
    }

    private HttpRequest.Builder to(String path, String token) {
        return HttpRequest.newBuilder(URI.create(baseUrl + path)).header("Authorization", "Bearer " + token);
    }

    private static void tell(String what, double[] millis) {
        Arrays.sort(millis);
        System.out.printf(Locale.ROOT, "%s: median %.1f ms, 95 of 100 within %.1f ms (%d readings)%n", what,
                millis[millis.length / 2], millis[(int) (0.95 * (millis.length - 1))], millis.length);
    }
}
