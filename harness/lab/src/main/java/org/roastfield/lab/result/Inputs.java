package org.roastfield.lab.result;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import org.roastfield.core.simulation.Settings;
import org.roastfield.lab.result.RunManifest.InputFile;
import org.roastfield.lab.result.RunManifest.Setting;

/** Entries of a manifest. */
public final class Inputs {

  private Inputs() {}

  /**
   * Entry of a file that was read.
   *
   * @param role such as "cook"
   * @param name last part of its path
   * @param bytes content; not modified
   */
  public static InputFile file(String role, String name, byte[] bytes) {
    return new InputFile(role, name, bytes.length, sha256(bytes));
  }

  /** Entries of the settings of a simulation. */
  public static List<Setting> settings(Settings settings) {
    return List.of(
        new Setting("accuracy_K", number(settings.accuracy())),
        new Setting("cells", Integer.toString(settings.cells())),
        new Setting("surface_cell_m", number(settings.surfaceCell())),
        new Setting("most_steps", Integer.toString(settings.mostSteps())));
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%s", value);
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every JVM has SHA-256", e);
    }
  }
}
