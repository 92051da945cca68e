package org.tankrounds;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.UnknownHostException;
import org.tankrounds.config.CommandException;
import org.tankrounds.config.Config;
import picocli.CommandLine.Option;

/**
 * Where to listen. The port is settled before anything is started: the demo's sign-ins name it and must be
 * complete before the first request can be answered, and somebody whose port is taken need not wait to hear
 * so.
 */
final class PortOption {
    @Option(names = "--port", paramLabel = "N", description = "Port to listen on (8080); 0 takes a free one.")
    private Integer port;

    /** @throws CommandException where no program can listen there, or another one does */
    Config settled(Config config) {
        return config.withPort(settle(config.host(), wanted(config)));
    }

    private int wanted(Config config) {
        if (port != null && (port < 0 || port > 65535)) {
            throw CommandException.wrongCall(
                    "--port is " + port + "; a number from 0 (any free port) to 65535 is accepted.");
        }
        return port == null ? config.port() : port;
    }

    static int settle(String host, int wanted) {
        try (ServerSocket probe = new ServerSocket()) {
            probe.setReuseAddress(true);
            probe.bind(new InetSocketAddress(InetAddress.getByName(host), wanted));
            return probe.getLocalPort();
        } catch (UnknownHostException e) {
            throw CommandException.wrongCall("There is no address " + host
                    + " on this machine; see TANKROUNDS_HOST.");
        } catch (IOException e) {
            throw CommandException.failed("Port " + wanted + " on " + host + " cannot be used ("
                    + e.getMessage()
                    + "); perhaps another program has it. Choose another with --port N, or --port 0 for any free one.");
        }
    }
}
