package org.roastfield.lab.files;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Writes log packages. */
public final class LogPackageWriter {

  private LogPackageWriter() {}

  /**
   * Writes all files of a package into an empty folder, the descriptor last.
   *
   * @throws IOException if one cannot be written, or is there already
   * @throws IllegalArgumentException if one is larger than can be read back
   */
  public static void write(LogPackage log, Path folder) throws IOException {
    String sha256 = readings(log, folder.resolve(PackageFiles.READINGS));
    PackageFiles.write(folder, PackageFiles.EVENTS, PeopleTables.EVENTS.text(log.events()));
    PackageFiles.write(folder, PackageFiles.SPOTS, PeopleTables.SPOTS.text(log.spots()));
    PackageFiles.write(folder, PackageFiles.CHECKS, PeopleTables.CHECKS.text(log.checks()));
    PackageFiles.write(folder, PackageFiles.SOURCE, log.source());
    if (log.cook().isPresent()) {
      PackageFiles.write(folder, PackageFiles.COOK, log.cook().get());
    }
    if (log.afterwards().isPresent()) {
      PackageFiles.write(
          folder, PackageFiles.AFTERWARDS, AfterwardsFile.text(log.afterwards().get()));
    }
    long bytes = Files.size(folder.resolve(PackageFiles.READINGS));
    PackageFiles.checkSize(PackageFiles.READINGS, bytes);
    PackageFiles.write(folder, PackageFiles.DESCRIPTOR, DescriptorText.of(log, bytes, sha256));
  }

  /** Writes the readings; their hash. */
  private static String readings(LogPackage log, Path file) throws IOException {
    MessageDigest digest = sha256();
    try (OutputStream out =
            Files.newOutputStream(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        Writer writer =
            new BufferedWriter(
                new OutputStreamWriter(
                    new DigestOutputStream(out, digest), StandardCharsets.UTF_8))) {
      ReadingsText.write(writer, log.formats(), log.readings());
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  /** The hash that descriptors and sources use. */
  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every JVM has SHA-256", e);
    }
  }
}
