package org.roastfield.lab.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * Reads log packages: folders with {@code datapackage.json} (a Data Package of version 2 by our
 * profile {@code log/1}), {@code readings.csv} (see {@link CookLogReader}), {@code events.csv},
 * {@code spots.csv}, {@code checks.csv}, {@code SOURCE.md} and, if there are such, {@code
 * cook.yaml} and {@code afterwards.yaml}.
 *
 * <p>Every mistake is a {@link CookFileException} with file, line and column.
 */
public final class LogPackageReader {

  private LogPackageReader() {}

  /** Whether {@code path} is a folder, and so a log package or nothing that can be read. */
  public static boolean isFolder(Path path) {
    return Files.isDirectory(path);
  }

  /** Where the readings of a package are. */
  public static Path readingsOf(Path folder) {
    return folder.resolve(PackageFiles.READINGS);
  }

  /**
   * Reads a package.
   *
   * @throws IOException if a file cannot be read at all
   * @throws CookFileException if a file is not what it should be
   */
  public static LogPackage read(Path folder) throws IOException {
    byte[] bytes = PackageFiles.bytes(folder, PackageFiles.DESCRIPTOR);
    Descriptor descriptor = Descriptor.parse(PackageFiles.DESCRIPTOR, bytes);
    return new LogPackage(
        descriptor.facts(),
        descriptor.formats(),
        readings(folder, descriptor),
        descriptor.setting(),
        PeopleTables.EVENTS.read(
            PackageFiles.EVENTS, PackageFiles.bytes(folder, PackageFiles.EVENTS)),
        PeopleTables.SPOTS.read(PackageFiles.SPOTS, PackageFiles.bytes(folder, PackageFiles.SPOTS)),
        PeopleTables.CHECKS.read(
            PackageFiles.CHECKS, PackageFiles.bytes(folder, PackageFiles.CHECKS)),
        optional(folder, PackageFiles.AFTERWARDS)
            .map(text -> AfterwardsFile.read(PackageFiles.AFTERWARDS, text)),
        optional(folder, PackageFiles.COOK)
            .map(text -> SourceText.decode(PackageFiles.COOK, text).text()),
        SourceText.decode(PackageFiles.SOURCE, PackageFiles.bytes(folder, PackageFiles.SOURCE))
            .text());
  }

  private static CookLog readings(Path folder, Descriptor descriptor) throws IOException {
    byte[] bytes = PackageFiles.bytes(folder, PackageFiles.READINGS);
    String hash = HexFormat.of().formatHex(LogPackageWriter.sha256().digest(bytes));
    if (!hash.equals(descriptor.sha256())) {
      throw new CookFileException(
          PackageFiles.READINGS,
          1,
          1,
          "sha256 " + hash,
          "sha256 " + descriptor.sha256() + " as " + PackageFiles.DESCRIPTOR + " says");
    }
    CookLogReader.Readings readings = CookLogReader.readings(PackageFiles.READINGS, bytes);
    List<String> found =
        readings.columns().stream()
            .map(column -> column.name() + "_" + column.unit().word())
            .toList();
    if (!found.equals(descriptor.columns())) {
      throw new CookFileException(
          PackageFiles.READINGS,
          readings.log().comments().size() + 1,
          1,
          "the columns " + String.join(",", found),
          String.join(",", descriptor.columns()) + " as " + PackageFiles.DESCRIPTOR + " says");
    }
    return readings.log();
  }

  private static Optional<byte[]> optional(Path folder, String name) throws IOException {
    return PackageFiles.has(folder, name)
        ? Optional.of(PackageFiles.bytes(folder, name))
        : Optional.empty();
  }
}
