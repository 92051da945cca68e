package org.tankrounds.readings.files;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Map;
import org.tankrounds.water.Analyte;

/** One row that can be kept. */
public record LoggedLine(int line, Instant at, Map<Analyte, BigDecimal> values) {}
