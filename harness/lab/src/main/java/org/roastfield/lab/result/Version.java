package org.roastfield.lab.result;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** Version of this build, written into it by Maven. */
public final class Version {

  private Version() {}

  /** Such as "0.1.0". */
  public static String text() {
    try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
      if (in == null) {
        throw new IllegalStateException("version.properties is missing from this build");
      }
      Properties properties = new Properties();
      properties.load(in);
      return properties.getProperty("version", "");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
