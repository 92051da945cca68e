import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Posts readings to a running demo one after another, and looks each time at the board until it has changed. */
final class PostTimes {
    private static final int FIRST_ONES_LEFT_OUT = 50;
    private static final long PAUSE_NANOS = 1_000_000;
    private static final long GIVE_UP_NANOS = 10_000_000_000L;
    private static final String QUOTED = "\"\\s*:\\s*\"([^\"]+)\"";
    private static final Pattern TANK = Pattern.compile("\"code" + QUOTED + "[^{}]*?\"token" + QUOTED);
    private static final Pattern FORM_TOKEN = Pattern.compile("name=\"form_token\" value=\"([^\"]*)\"");

    private final HttpClient http = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1)
            .cookieHandler(new CookieManager()).build();
    private final List<Double> answered = new ArrayList<>();
    private final List<Double> renewed = new ArrayList<>();
    private final String access;
    private final String baseUrl;

    private PostTimes(String access) {
        this.access = access;
        baseUrl = first("\"baseUrl" + QUOTED, access);
    }

    /** @param arguments the demo's demo-access.json; how many readings */
    public static void main(String[] arguments) throws Exception {
        new PostTimes(Files.readString(Path.of(arguments[0]))).measure(Integer.parseInt(arguments[1]));
    }

    private void measure(int readings) throws Exception {
        signIn();
        List<String[]> tanks = tanks();
        for (int i = 0; answered.size() < readings; i++) {
            postAndWait(tanks.get(i % tanks.size()), 10 + i % 20 / 10.0, i >= FIRST_ONES_LEFT_OUT);
        }
        tell("posted reading answered", answered);
        tell("board new after the answer", renewed);
    }

    /** The first person of the demo is a chapter's coordinator. */
    private void signIn() throws Exception {
        String page = http.send(to("/sign-in").build(), BodyHandlers.ofString()).body();
        String form = "form_token=" + first(FORM_TOKEN.pattern(), page)
                + "&email=" + encoded(first("\"email" + QUOTED, access))
                + "&password=" + encoded(first("\"password" + QUOTED, access));
        http.send(to("/sign-in").header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(form)).build(), BodyHandlers.discarding());
    }

    /** The same chapter's. */
    private List<String[]> tanks() {
        int from = access.indexOf("\"tanks\"");
        List<String[]> tanks = new ArrayList<>();
        for (Matcher tank = TANK.matcher(access).region(from, access.indexOf(']', from)); tank.find();) {
            tanks.add(new String[] {tank.group(1), tank.group(2)});
        }
        return tanks;
    }

    private void postAndWait(String[] tank, double temperatureC, boolean counts) throws Exception {
        String etag = board("").headers().firstValue("ETag").orElseThrow();
        Instant minute = Instant.now().truncatedTo(ChronoUnit.MINUTES);
        long from = System.nanoTime();
        post(tank, temperatureC);
        long stored = System.nanoTime();
        waitForAnotherThan(etag);
        // The board is another at every full minute: then it tells nothing.
        if (counts && minute.equals(Instant.now().truncatedTo(ChronoUnit.MINUTES))) {
            answered.add((stored - from) / 1e6);
            renewed.add((System.nanoTime() - stored) / 1e6);
        }
    }

    private void post(String[] tank, double temperatureC) throws Exception {
        String body = String.format(Locale.ROOT, "{\"measuredAt\":\"%s\",\"values\":"
                + "[{\"analyte\":\"temperature\",\"value\":%.1f,\"unit\":\"Cel\",\"step\":0.1}]}",
                Instant.now(), temperatureC);
        HttpResponse<String> answer = http.send(to("/api/v1/tanks/" + tank[0] + "/readings")
                .header("Authorization", "Bearer " + tank[1]).header("Content-Type", "application/json")
                .header("Idempotency-Key", UUID.randomUUID().toString())
                .POST(BodyPublishers.ofString(body)).build(), BodyHandlers.ofString());
        if (answer.statusCode() != 201) {
            throw new IOException("a reading was answered with " + answer.statusCode() + ": " + answer.body());
        }
    }

    /** Asks again and again, with a pause: the time is known to that and the time of an answer. */
    private void waitForAnotherThan(String etag) throws Exception {
        long until = System.nanoTime() + GIVE_UP_NANOS;
        while (board(etag).statusCode() == 304) {
            if (System.nanoTime() > until) {
                throw new IOException("the board did not change");
            }
            LockSupport.parkNanos(PAUSE_NANOS);
        }
    }

    private HttpResponse<Void> board(String etag) throws Exception {
        HttpRequest.Builder request = to("/rounds");
        if (!etag.isEmpty()) {
            request.header("If-None-Match", etag);
        }
        HttpResponse<Void> answer = http.send(request.build(), BodyHandlers.discarding());
        if (answer.statusCode() != 200 && answer.statusCode() != 304) {
            throw new IOException("the board was answered with " + answer.statusCode());
        }
        return answer;
    }

    private HttpRequest.Builder to(String path) {
        return HttpRequest.newBuilder(URI.create(baseUrl + path));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static String first(String pattern, String text) {
        Matcher found = Pattern.compile(pattern).matcher(text);
        if (!found.find()) {
            throw new IllegalArgumentException("there is no " + pattern);
        }
        return found.group(1);
    }

    private static void tell(String what, List<Double> millis) {
        double[] sorted = millis.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        System.out.printf(Locale.ROOT, "%s: median %.1f ms, 95 of 100 within %.1f ms (%d readings)%n", what,
                sorted[sorted.length / 2], sorted[(int) (0.95 * (sorted.length - 1))], sorted.length);
    }
}
