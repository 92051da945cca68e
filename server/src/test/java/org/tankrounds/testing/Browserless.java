package org.tankrounds.testing;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandler;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A browser as far as plain pages and forms need one: it keeps cookies, remembers the form token of the last
 * page and sends it with the next form. It follows no redirect, so that tests see them. Headers set with
 * {@link #header} go with every request.
 */
public final class Browserless {
    private static final Pattern TOKEN = Pattern.compile("name=\"form_token\" value=\"([^\"]*)\"");
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    /** @param body as text */
    public record Answer(int status, Map<String, java.util.List<String>> headers, String body) {
        public Optional<String> header(String name) {
            return Optional.ofNullable(headers.get(name)).map(values -> values.get(0));
        }

        public String location() {
            return header("location").orElse("");
        }
    }

    private final String baseUrl;
    private final Map<String, String> cookies = new TreeMap<>();
    private final Map<String, String> headers = new TreeMap<>();
    private String formToken = "";

    public Browserless(String baseUrl) {
        this.baseUrl = baseUrl;
    }

    /** Goes with every request from now on; null takes it away. */
    public Browserless header(String name, String value) {
        if (value == null) {
            headers.remove(name);
        } else {
            headers.put(name, value);
        }
        return this;
    }

    /** A script with a bearer token. */
    public Browserless bearer(String token) {
        return header("Authorization", "Bearer " + token);
    }

    public Map<String, String> cookies() {
        return cookies;
    }

    /** Of the page that was shown last. */
    public String formToken() {
        return formToken;
    }

    public Answer get(String path) {
        return send(request(path).GET());
    }

    public Answer head(String path) {
        return send(request(path).method("HEAD", BodyPublishers.noBody()));
    }

    /** Sends a form with the last page's token; fields as name, value, name, value. */
    public Answer post(String path, String... fields) {
        return postForm(path, filledIn(fields));
    }

    /** The same for a form that is answered with a file. */
    public byte[] postForFile(String path, String... fields) {
        return exchange(form(path, filledIn(fields)), BodyHandlers.ofByteArray()).body();
    }

    public byte[] getFile(String path) {
        return exchange(request(path).GET(), BodyHandlers.ofByteArray()).body();
    }

    private Map<String, String> filledIn(String... fields) {
        Map<String, String> form = new LinkedHashMap<>();
        form.put("form_token", formToken);
        for (int i = 0; i < fields.length; i += 2) {
            form.put(fields[i], fields[i + 1]);
        }
        return form;
    }

    /** Sends exactly these fields. */
    public Answer postForm(String path, Map<String, String> form) {
        return send(form(path, form));
    }

    private HttpRequest.Builder form(String path, Map<String, String> form) {
        String body = form.entrySet().stream()
                .map(field -> encode(field.getKey()) + "=" + encode(field.getValue()))
                .collect(Collectors.joining("&"));
        return request(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(body));
    }

    /** Sends a form with one file and the last page's token. */
    public Answer upload(String path, String fileName, byte[] content) {
        return upload(path, fileName, BodyPublishers.ofByteArray(content));
    }

    /** The same without saying beforehand how long it is. */
    public Answer upload(String path, String fileName, InputStream content) {
        return upload(path, fileName, BodyPublishers.ofInputStream(() -> content));
    }

    /** @param length told beforehand */
    public Answer upload(String path, String fileName, InputStream content, long length) {
        return upload(path, fileName, BodyPublishers.fromPublisher(
                BodyPublishers.ofInputStream(() -> content), length));
    }

    private Answer upload(String path, String fileName, BodyPublisher content) {
        String start = "--between\r\nContent-Disposition: form-data; name=\"form_token\"\r\n\r\n" + formToken
                + "\r\n--between\r\nContent-Disposition: form-data; name=\"file\"; filename=\"" + fileName
                + "\"\r\nContent-Type: text/csv\r\n\r\n";
        return send(request(path).header("Content-Type", "multipart/form-data; boundary=between")
                .POST(BodyPublishers.concat(BodyPublishers.ofString(start), content,
                        BodyPublishers.ofString("\r\n--between--\r\n"))));
    }

    public Answer postJson(String path, String json) {
        return send(request(path)
                .header("Content-Type", "application/json").POST(BodyPublishers.ofString(json)));
    }

    public Answer send(String method, String path, String contentType, byte[] body) {
        return send(request(path)
                .header("Content-Type", contentType)
                .method(method, BodyPublishers.ofByteArray(body)));
    }

    public Answer signIn(Cast.Member member) {
        return signIn(member.email(), Cast.PASSWORD);
    }

    public Answer signIn(String email, String password) {
        get("/sign-in");
        return post("/sign-in", "email", email, "password", password);
    }

    /** With a class card. */
    public Answer comeIn(String code) {
        get("/card");
        return post("/card", "code", code);
    }

    private HttpRequest.Builder request(String path) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(baseUrl + path));
        headers.forEach(request::header);
        if (!cookies.isEmpty()) {
            request.header("Cookie", cookies.entrySet().stream()
                    .map(cookie -> cookie.getKey() + "=" + cookie.getValue())
                    .collect(Collectors.joining("; ")));
        }
        return request;
    }

    private Answer send(HttpRequest.Builder request) {
        HttpResponse<String> response = exchange(request, BodyHandlers.ofString(StandardCharsets.UTF_8));
        response.headers().allValues("set-cookie").forEach(this::keep);
        Matcher token = TOKEN.matcher(response.body());
        if (token.find()) {
            formToken = token.group(1);
        }
        return new Answer(response.statusCode(), response.headers().map(), response.body());
    }

    private <T> HttpResponse<T> exchange(HttpRequest.Builder request, BodyHandler<T> handler) {
        try {
            return CLIENT.send(request.build(), handler);
        } catch (IOException e) {
            throw new IllegalStateException("no answer from " + baseUrl, e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted", e);
        }
    }

    private void keep(String setCookie) {
        String[] pair = setCookie.split(";", 2)[0].split("=", 2);
        if (pair[1].isEmpty() || setCookie.contains("Max-Age=0")) {
            cookies.remove(pair[0]);
        } else {
            cookies.put(pair[0], pair[1]);
        }
    }

    private static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
