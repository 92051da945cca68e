package org.tankrounds.browser;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.Chromium;
import org.tankrounds.testing.Device;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;

/** A service whose clock goes with the device's, and for each test a device and a chapter of its own. */
abstract class AtADevice {
    static TestApp app;

    Cast cast;
    Device device;

    @BeforeAll
    static void start() {
        Chromium.shared();
        app = TestApp.start(new TestClock(Instant.now()));
    }

    @AfterAll
    static void stop() {
        if (app != null) {
            app.close();
        }
    }

    @BeforeEach
    void openDevice() {
        app.clock().advance(Duration.between(app.clock().instant(), Instant.now()));
        cast = Cast.add(app.transactions(), getClass().getSimpleName());
        device = Device.at(app.baseUrl());
    }

    @AfterEach
    void closeDevice() {
        device.close();
    }
}
