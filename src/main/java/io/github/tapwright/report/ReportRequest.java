package io.github.tapwright.report;

import java.time.Instant;

/**
 * Which report to make.
 *
 * @param kind whom it is for
 * @param subject what it is about
 * @param madeAt the time printed on it; the same request makes the same bytes
 */
public record ReportRequest(ReportKind kind, ReportSubject subject, Instant madeAt) {}
