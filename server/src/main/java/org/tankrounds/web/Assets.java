package org.tankrounds.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Style sheets and scripts under addresses that contain their hash: a browser may keep them for ever, and a new
 * build never meets an old file. The style sheets are joined, in the order of {@code assets/styles.list}.
 */
public final class Assets {
    private static final String FOLDER = "/assets/";
    private static final Map<String, String> TYPES = Map.of(
            "css", "text/css; charset=utf-8", "js", "text/javascript; charset=utf-8", "svg", "image/svg+xml",
            "png", "image/png");

    private record Asset(String path, String type, byte[] bytes) {}

    private final Map<String, Asset> byName = new LinkedHashMap<>();
    private final Map<String, Asset> byPath = new LinkedHashMap<>();
    private final String build;

    public Assets() {
        StringBuilder styles = new StringBuilder();
        for (String name : lines("styles.list")) {
            styles.append(text(name)).append('\n');
        }
        add("tankrounds.css", styles.toString().getBytes(StandardCharsets.UTF_8));
        for (String name : lines("files.list")) {
            String path = name.startsWith("/") ? name : FOLDER + name;
            add(name.substring(name.lastIndexOf('/') + 1), read(path));
        }
        build = HexFormat.of().formatHex(Secrets.sha256(String.join(" ", byPath.keySet()))).substring(0, 12);
    }

    /** @return the address of a file in this build */
    public String path(String name) {
        Asset asset = byName.get(name);
        if (asset == null) {
            throw new IllegalArgumentException("no asset is called " + name);
        }
        return asset.path();
    }

    /** Changes with every build that looks or behaves differently. */
    public String build() {
        return build;
    }

    /** A file that is not handed out as it is. */
    static String text(String name) {
        return new String(read(FOLDER + name), StandardCharsets.UTF_8);
    }

    void serve(Context ctx) {
        Asset asset = byPath.get(ctx.path());
        if (asset == null) {
            throw new NotFoundException("file");
        }
        ctx.header("Cache-Control", "public, max-age=31536000, immutable")
                .contentType(asset.type())
                .result(asset.bytes());
    }

    private void add(String name, byte[] bytes) {
        String hash = HexFormat.of().formatHex(Secrets.sha256(bytes)).substring(0, 12);
        String extension = name.substring(name.lastIndexOf('.') + 1);
        Asset asset = new Asset("/assets/" + hash + "/" + name, TYPES.get(extension), bytes);
        byName.put(name, asset);
        byPath.put(asset.path(), asset);
    }

    private static String[] lines(String name) {
        return Arrays.stream(text(name).split("\n")).map(String::strip).filter(line -> !line.isEmpty())
                .toArray(String[]::new);
    }

    private static byte[] read(String resource) {
        try (InputStream in = Assets.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the build lacks " + resource);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new IllegalStateException("cannot read " + resource, e);
        }
    }
}
