package org.tankrounds.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Forms as RFC 7578 lays them out. */
class MultipartFormTest {
    private static final String TYPE = "multipart/form-data; boundary=b";

    @Test
    void fieldsAndFiles_areReadAsTheyWereSent() {
        MultipartForm form = parse(TYPE, "--b\r\nContent-Disposition: form-data; name=\"form_token\"\r\n\r\nsecret\r\n"
                + "--b\r\nContent-Disposition: form-data; name=\"file\"; filename=\"mayo ñ.csv\"\r\n"
                + "Content-Type: text/csv\r\n\r\na,b\r\n--x\r\n\r\n--b--\r\n");

        assertThat(form.field("form_token")).contains("secret");
        assertThat(form.field("file")).isEmpty();
        assertThat(form.file("file").orElseThrow().name()).isEqualTo("mayo ñ.csv");
        assertThat(new String(form.file("file").orElseThrow().content(), StandardCharsets.UTF_8))
                .isEqualTo("a,b\r\n--x\r\n");
    }

    @Test
    void aBoxWithoutAFile_isNoFile() {
        MultipartForm form = parse("multipart/form-data; boundary=\"b\"", "--b\r\nContent-Disposition: form-data;"
                + " name=\"file\"; filename=\"\"\r\nContent-Type: application/octet-stream\r\n\r\n\r\n--b--");

        assertThat(form.file("file")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "", "--b", "--b\r\n", "--c--", "--b\r\nContent-Disposition: form-data; name=\"a\"\r\n\r\n1",
        "--b\r\nContent-Disposition: form-data\r\n\r\n1\r\n--b--", "--b\r\nno end of headers\r\n--b--"})
    void whatBreaksOff_isNoForm(String body) {
        assertThatThrownBy(() -> parse(TYPE, body)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void withoutABoundary_thereIsNoForm() {
        assertThatThrownBy(() -> parse("multipart/form-data", "--b--")).isInstanceOf(IllegalArgumentException.class);
    }

    private static MultipartForm parse(String type, String body) {
        return MultipartForm.parse(type, body.getBytes(StandardCharsets.UTF_8));
    }
}
