package org.roastfield.lab.result;

import java.util.List;

/**
 * What a result was made from: enough to make it again. Holds no clock time and no folder, so that
 * the same input gives the same manifest.
 *
 * @param version of Roastfield
 * @param command its name, such as "simulate"
 * @param inputs files that were read
 * @param settings all of them, by name
 * @param javaVersion of the JVM that computed
 */
public record RunManifest(
    String version,
    String command,
    List<InputFile> inputs,
    List<Setting> settings,
    String javaVersion) {

  /** Copies the lists. */
  public RunManifest {
    inputs = List.copyOf(inputs);
    settings = List.copyOf(settings);
  }

  /**
   * A file that was read.
   *
   * @param role such as "cook" or "log"
   * @param name last part of the path
   * @param bytes size
   * @param sha256 of its bytes, lower-case hexadecimal
   */
  public record InputFile(String role, String name, long bytes, String sha256) {}

  /**
   * A setting.
   *
   * @param name with its unit, such as "accuracy_K"
   * @param value as text
   */
  public record Setting(String name, String value) {}
}
