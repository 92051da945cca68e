package org.tankrounds.config;

import java.util.List;

/** Everything that is wrong with the configuration, told at once. */
public final class ConfigException extends RuntimeException {
    private final List<String> faults;

    ConfigException(List<String> faults) {
        super(String.join("\n", faults));
        this.faults = List.copyOf(faults);
    }

    public List<String> faults() {
        return faults;
    }
}
