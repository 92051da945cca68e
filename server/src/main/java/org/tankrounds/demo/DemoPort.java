package org.tankrounds.demo;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.UnknownHostException;
import org.tankrounds.config.CommandException;

/**
 * The port is settled before anything is started: the sign-ins name it and must be complete before the first request
 * can be answered, and somebody whose port is taken need not wait to hear so.
 */
public final class DemoPort {
    private DemoPort() {}

    /**
     * @param wanted 0 for any free one
     * @throws CommandException where another program listens there
     */
    public static int settle(String host, int wanted) {
        try (ServerSocket probe = new ServerSocket()) {
            probe.setReuseAddress(true);
            probe.bind(new InetSocketAddress(InetAddress.getByName(host), wanted));
            return probe.getLocalPort();
        } catch (UnknownHostException e) {
            throw CommandException.wrongCall("There is no address " + host + " on this machine; see TANKROUNDS_HOST.");
        } catch (IOException e) {
            throw CommandException.failed("Port " + wanted + " on " + host + " cannot be used (" + e.getMessage()
                    + "); perhaps another program has it. Choose another with --port N, or --port 0 for any free one.");
        }
    }
}
