package org.tankrounds;

import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.encoder.JsonEncoder;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.OutputStreamAppender;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tankrounds.config.Config.LogFormat;

/** How the log on standard error looks: lines for people, as logback.xml says, or one JSON object a line. */
final class Logs {
    private Logs() {}

    static void use(LogFormat format) {
        if (format == LogFormat.JSON) {
            LoggerContext context = (LoggerContext) LoggerFactory.getILoggerFactory();
            OutputStreamAppender<ILoggingEvent> appender =
                    (OutputStreamAppender<ILoggingEvent>) context.getLogger(Logger.ROOT_LOGGER_NAME).getAppender("ERR");
            appender.stop();
            appender.setEncoder(encoder(context));
            appender.start();
        }
    }

    private static JsonEncoder encoder(LoggerContext context) {
        JsonEncoder encoder = new JsonEncoder();
        encoder.setContext(context);
        encoder.setWithContext(false);
        encoder.setWithSequenceNumber(false);
        encoder.setWithNanoseconds(false);
        encoder.setWithMessage(false);
        encoder.setWithArguments(false);
        encoder.setWithFormattedMessage(true);
        encoder.start();
        return encoder;
    }
}
