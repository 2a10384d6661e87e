package org.roastfield.lab.diagnosis;

import java.util.Optional;
import org.roastfield.lab.cooker.LogSpan;
import org.roastfield.lab.files.LogPackage;

/**
 * Where a log of a calibration comes from.
 *
 * @param log as written
 * @param span the part of it that is used
 * @param probe that the core readings are from, if the cook file leaves that open
 */
public record Source(LogPackage log, LogSpan span, Optional<String> probe) {}
