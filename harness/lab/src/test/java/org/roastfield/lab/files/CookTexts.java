package org.roastfield.lab.files;

import java.nio.charset.StandardCharsets;

/** A small right cook file that tests spoil in one place each. */
public final class CookTexts {

  /** A slab, 40 mm, in two stages. */
  public static final String SLAB =
      """
      roastfield: cook/1
      name: Strip steak
      starts: 2026-06-13T18:00
      altitude: 0 m
      cut:
        food: beef
        shape: slab
        thickness: 40 mm
        start-temperature: 5 °C
        material: {name: beef, conductivity: 0.48 W/(m·K), density: 1060 kg/m³, heat-capacity: 3500 J/(kg·K)}
      probes:
        - {name: tip, depth: 15 mm}
      stages:
        - name: gentle heat
          chamber: {air: 110 °C, humidity-ratio: 0.03, heat-transfer: 6 W/(m²·K)}
          wetness: 0.3
          end: {core: 46 °C, at-latest: 3 h}
        - name: rest
          chamber: {air: 20 °C, heat-transfer: 5 W/(m²·K)}
          wetness: 0
          end: {after: 20 min}
      """;

  private CookTexts() {}

  /** {@link #SLAB} with one piece of text replaced, which must be there once. */
  static String spoilt(String piece, String by) {
    int at = SLAB.indexOf(piece);
    if (at < 0 || SLAB.indexOf(piece, at + 1) >= 0) {
      throw new IllegalArgumentException("must be there once: " + piece);
    }
    return SLAB.substring(0, at) + by + SLAB.substring(at + piece.length());
  }

  /** Reads a text as the file cook.yaml. */
  public static CookFile read(String text) {
    return CookFileReader.parse("cook.yaml", text.getBytes(StandardCharsets.UTF_8));
  }
}
