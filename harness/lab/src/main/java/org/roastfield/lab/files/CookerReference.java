package org.roastfield.lab.files;

import java.util.Optional;

/**
 * A cooker profile that a cook file names.
 *
 * @param id words in lower case joined by hyphens
 * @param profile its content; empty if the cook was read from bytes without a place
 */
public record CookerReference(String id, Optional<CookerProfileFile> profile) {}
