package org.tankrounds;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.ServiceProcess;

/** The service as a process: how it ends, how it heals, what it logs. */
class ServeIT {
    @TempDir
    private Path folder;

    @Test
    void askedToStop_itAnswersWhatItHadBegunAndExitsWith0() throws Exception {
        try (ServiceProcess service = ServiceProcess.start(folder, Map.of(), "serve")) {
            assertThat(new Browserless(service.baseUrl()).get("/readyz").status()).isEqualTo(200);
            try (Socket half = new Socket("127.0.0.1", service.port())) {
                OutputStream out = half.getOutputStream();
                out.write(("POST /sign-in HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Length: 20\r\n"
                        + "Content-Type: application/x-www-form-urlencoded\r\n\r\nemail=a%40")
                        .getBytes(StandardCharsets.US_ASCII));
                out.flush();
                assertThat(new Browserless(service.baseUrl()).get("/healthz").status()).isEqualTo(200);

                service.askToStop();
                service.askToStop();
                awaitRefusal(service.port());
                out.write("b.example&".getBytes(StandardCharsets.US_ASCII));
                out.flush();

                String status =
                        new BufferedReader(new InputStreamReader(half.getInputStream(),
                                StandardCharsets.US_ASCII))
                        .readLine();
                assertThat(status).startsWith("HTTP/1.1 4");
            }
            assertThat(service.awaitExit()).isZero();
            assertThat(service.log()).doesNotContain("Exception").doesNotContain("\tat ");
        }
    }

    @Test
    void killedPostgres_isRevivedWithoutHelp() throws Exception {
        try (ServiceProcess service = ServiceProcess.start(folder, Map.of(), "serve")) {
            Browserless browser = new Browserless(service.baseUrl());
            long killed = ServiceProcess.postgresPid(folder);
            ProcessHandle.of(killed).orElseThrow().destroyForcibly();

            long deadline = System.nanoTime() + 20_000_000_000L;
            while (List.of(0L, killed).contains(ServiceProcess.postgresPid(folder))
                    || browser.get("/readyz").status() != 200) {
                assertThat(System.nanoTime()).as("ready again in time").isLessThan(deadline);
            }
        }
    }

    @Test
    void logsOnRequest_areOneJsonObjectALine() throws Exception {
        try (ServiceProcess service =
                ServiceProcess.start(folder, Map.of("TANKROUNDS_LOG", "json"), "serve")) {
            ProcessHandle.of(ServiceProcess.postgresPid(folder)).orElseThrow().destroyForcibly();
            long deadline = System.nanoTime() + 20_000_000_000L;
            while (!service.log().contains("starting it again")) {
                assertThat(System.nanoTime()).as("a log line in time").isLessThan(deadline);
            }
            service.askToStop();
            service.awaitExit();

            List<String> lines = service.log().lines().toList();
            assertThat(lines).isNotEmpty().allSatisfy(line -> {
                JsonNode entry = new ObjectMapper().readTree(line);
                assertThat(entry.path("level").asText()).isIn("INFO", "WARN", "ERROR");
                assertThat(entry.path("formattedMessage").asText()).isNotBlank();
                assertThat(entry.path("timestamp").isNumber()).isTrue();
            });
        }
    }

    /** New callers are turned away as soon as the stop has begun; one that came as it began is cut off. */
    private static void awaitRefusal(int port) throws IOException {
        long deadline = System.nanoTime() + 8_000_000_000L;
        while (System.nanoTime() < deadline) {
            try (Socket probe = new Socket("127.0.0.1", port)) {
                probe.setSoTimeout(1_000);
            } catch (SocketException refused) {
                return;
            }
        }
        throw new AssertionError("still accepting new callers");
    }
}
