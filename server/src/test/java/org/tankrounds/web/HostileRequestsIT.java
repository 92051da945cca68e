package org.tankrounds.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.net.SocketException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.App.Route;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.TestApp;

/** What no browser sends, written by hand onto the wire: it is refused, and nothing breaks. */
class HostileRequestsIT {
    private static final TestApp APP = TestApp.shared();
    private static final String FORM = "application/x-www-form-urlencoded";

    static Stream<Route> pagesToGet() {
        return APP.routes().stream().filter(route -> route.method().equals("GET"));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "/..", "/../../etc/passwd", "/%2e%2e/%2e%2e/etc/passwd", "/assets/../../server/pom.xml",
        "/assets/%2e%2e/%2e%2e/etc/passwd", "/assets/x/..%2f..%2fetc%2fpasswd", "/assets/x/logback.xml",
        "//sign-in", "/sign-in/", "/sign-in//", "/./sign-in", "/help;a=b", "/tanks%2fabc", "/%00", "/%",
        "/%zz",
        "/\\..\\", "/%c0%ae", "/help?%", "/help?a=%zz", "/sign-in?next=%00", "/rounds?for=%ff",
        "/tanks/%F0%9F%90%9F",
        "*", "/api/v1/rounds/", "/api/v1/%2e%2e/rounds", "http://elsewhere.example/sign-in",
        "/sign-in#fragment",
        "/favicon.ico", "/robots.txt", "/.well-known/security.txt", "/.git/config", "/WEB-INF/web.xml",
    })
    void strangeAddresses_neverBreakAnything(String address) throws IOException {
        String answer = raw("GET " + address + " HTTP/1.1\r\nHost: here.example\r\n\r\n");
        assertThat(status(answer)).as(answer).isBetween(200, 499);
        assertThat(answer)
                .contains("Content-Security-Policy: default-src 'none'", "X-Content-Type-Options: nosniff",
                "Cache-Control: private, no-store");
        assertThat(answer).doesNotContain("root:").doesNotContain("<configuration").doesNotContain("<project")
                .doesNotContain("Exception").doesNotContain("\tat ");
    }

    @ParameterizedTest
    @ValueSource(ints = {2_000, 7_000, 20_000, 200_000})
    void veryLongAddresses_areRefusedWithoutHarm(int length) throws IOException {
        for (String start : List.of("/", "/tanks/", "/help?a=", "/api/v1/tanks/")) {
            String answer = raw("GET " + start + "a".repeat(length) + " HTTP/1.1\r\nHost: h\r\n\r\n");
            assertThat(answer.isEmpty() || status(answer) < 500).as("%s…", start).isTrue();
        }
        assertThat(APP.browser().get("/healthz").status()).isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "elsewhere.example", "elsewhere.example:80", "\"><script>", "[::1", "a b", "", "127.0.0.1:99999"
    })
    void aHostileHost_isNeverRepeated(String host) throws IOException {
        for (String path : List.of("/", "/sign-in", "/rounds", "/help", "/api/v1/rounds", "/nothing")) {
            String answer = raw("GET " + path + " HTTP/1.1\r\nHost: " + host + "\r\n\r\n");
            assertThat(status(answer)).as(path).isBetween(200, 499);
            assertThat(answer).as(path).doesNotContain("elsewhere").doesNotContain("<script>");
        }
    }

    static Stream<String> malformedRequests() {
        return Stream.of(
                "GET / HTTP/9.9\r\nHost: h\r\n\r\n",
                "GET /\r\n\r\n",
                "GET / HTTP/1.1\r\n\r\n",
                "\r\n\r\n\r\n",
                "\u0016\u0003\u0001 hello",
                get("Host: another"),
                get("Content-Length: -1"),
                get("Cookie: tkr=\u0001; =; ;;"),
                get("no colon here"),
                get("Expect: 200-maybe"),
                get("Upgrade: websocket"),
                form("Content-Length: 5\r\nContent-Length: 6", FORM, "abcdef"),
                form("Content-Length: 4\r\nTransfer-Encoding: chunked", FORM, "0\r\n\r\n"),
                form("Transfer-Encoding: chunked", FORM, "zz\r\n"),
                form("Transfer-Encoding: chunked", FORM, "zz\r\nmore\r\n0\r\n\r\n"),
                form("Content-Length: 50", FORM, "a=b"),
                form("Content-Length: 5", FORM, "a=%zz"),
                form("Content-Length: 3", FORM + "; charset=no-such", "a=b"),
                form("Content-Length: 3", ";;;=", "a=b"));
    }

    @ParameterizedTest
    @MethodSource("malformedRequests")
    void malformedRequests_areRefused(String request) throws IOException {
        String answer = raw(request);
        assertThat(answer.isEmpty() || status(answer) < 500 || status(answer) == 505).as(answer).isTrue();
        assertThat(APP.browser().get("/healthz").status()).isEqualTo(200);
    }

    @ParameterizedTest
    @MethodSource("pagesToGet")
    void otherMethods_areRefusedBeforeAnythingIsAskedOrDone(Route route) {
        String path = route.path().replaceAll("\\{\\w+}", "x");
        for (String method : List.of("PUT", "DELETE", "PATCH", "TRACE", "OPTIONS", "PROPFIND", "BREW")) {
            Answer answer = APP.browser().send(method, path, "text/plain", new byte[0]);
            assertThat(answer.status()).as("%s %s", method, path).isIn(404, 405, 501);
            if (answer.status() == 405) {
                assertThat(answer.header("allow").orElse("")).as("%s %s", method, path).contains("GET");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("pagesToGet")
    void head_isAnsweredHonestly_orRefused(Route route) {
        Browserless coordinator = APP.browser();
        Answer head = coordinator.head(route.path().replaceAll("\\{\\w+}", "x"));
        boolean watched = APP.routes().contains(new Route("HEAD", route.path(), route.roles()));
        assertThat(head.status()).as(route.path()).isEqualTo(watched ? 200 : 405);
        assertThat(head.body()).isEmpty();
    }

    @Test
    void hugeHeaders_areRefusedWithoutHarm() throws IOException {
        String answer = raw("GET / HTTP/1.1\r\nHost: h\r\nCookie: tkr=" + "a".repeat(100_000) + "\r\n\r\n");
        assertThat(status(answer)).isEqualTo(431);
    }

    private static String get(String header) {
        return "GET / HTTP/1.1\r\nHost: h\r\n" + header + "\r\n\r\n";
    }

    /** @param length the headers that say how long it is, rightly or wrongly */
    private static String form(String length, String type, String body) {
        return "POST /sign-in HTTP/1.1\r\nHost: h\r\nContent-Type: " + type + "\r\n" + length + "\r\n\r\n"
                + body;
    }

    private static int status(String answer) {
        return Integer.parseInt(answer.split(" ", 3)[1]);
    }

    /**
     * @return everything that comes back, headers and all; empty where the connection is closed without a
     * word
     */
    private static String raw(String request) throws IOException {
        URI base = URI.create(APP.baseUrl());
        try (Socket socket = new Socket(base.getHost(), base.getPort())) {
            socket.setSoTimeout(10_000);
            try {
                socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
                socket.shutdownOutput();
                return new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
            } catch (SocketException hungUpOn) {
                return "";
            }
        }
    }
}
