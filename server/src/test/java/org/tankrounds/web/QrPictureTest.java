package org.tankrounds.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.pages.QrSquare;
import org.tankrounds.testing.Squares;

/** Read back by another library than the one that draws it. */
class QrPictureTest {
    @ParameterizedTest
    @ValueSource(strings = {
        "https://tanks.example.org/card/CK7PM4RXW", "http://127.0.0.1:8080/card/CK7PM4RXW",
        "https://a-rather-long-name-of-a-host.chapters.example.org/tanks/card/CK7PM4RXW"
    })
    void anAddress_isReadAsItWasDrawn(String address) {
        QrSquare square = QrPicture.of(address);

        assertThat(Squares.read(square.viewBox(), square.path())).isEqualTo(address);
    }
}
