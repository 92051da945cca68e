package org.tankrounds.web;

import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/**
 * What the web server refuses before any handler sees it, such as an address that could mean two. In few words: nobody
 * typed it.
 */
final class BareErrors extends ErrorHandler {
    private final SecurityHeaders headers;

    BareErrors(SecurityHeaders headers) {
        this.headers = headers;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        headers.set((name, value) -> response.getHeaders().put(name, value));
        // The server hangs up after a request that it could not read; whoever keeps connections wants to know.
        response.getHeaders().put("Connection", "close");
        int status = response.getStatus();
        String reason = HttpStatus.getMessage(status) + ".";
        boolean forScripts = String.valueOf(request.getHttpURI().getPath()).startsWith("/api/");
        String type = forScripts ? Problem.MEDIA_TYPE : "text/plain; charset=utf-8";
        response.getHeaders().put("Content-Type", type);
        Content.Sink.write(response, true, forScripts ? problem(status, reason) : reason + "\n", callback);
        return true;
    }

    private static String problem(int status, String reason) {
        return "{\"type\":\"about:blank\",\"title\":\"" + reason + "\",\"status\":" + status + "}";
    }
}
