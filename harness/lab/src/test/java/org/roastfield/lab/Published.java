package org.roastfield.lab;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.CookLogReader;

/** The cooks that the repository publishes. */
public final class Published {

  private Published() {}

  /** The boathouse pork loin. */
  public static CookFile porkLoin() {
    return CookFileReader.parse("cook.yaml", porkLoinBytes());
  }

  /** Bytes of its cook file. */
  public static byte[] porkLoinBytes() {
    return bytes("boathouse-pork-loin/cook.yaml");
  }

  /** Bytes of the cook file of the boathouse leg of lamb, a taper. */
  public static byte[] lambLegBytes() {
    return bytes("boathouse-lamb-leg/cook.yaml");
  }

  /** The synthetic log of the pork loin. */
  public static CookLog syntheticLog() {
    return CookLogReader.parse("readings.csv", syntheticLogBytes());
  }

  /** Bytes of that log. */
  public static byte[] syntheticLogBytes() {
    return bytes("syn-boathouse-pork-loin-1/readings.csv");
  }

  private static byte[] bytes(String path) {
    try (InputStream in = Published.class.getResourceAsStream("/cooks/" + path)) {
      if (in == null) {
        throw new IllegalStateException("not published: " + path);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
