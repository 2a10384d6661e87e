package org.roastfield.lab.files;

import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;
import org.roastfield.core.units.Temperatures;

/**
 * A check of a probe against a temperature that is known.
 *
 * @param probe name of its channel
 * @param kind in what it was held
 * @param temperature shown [K]
 * @param altitude above sea level, which sets the boiling point [m], -500 to 6000; not used in ice
 * @param note anything in words, perhaps empty; untrusted text
 */
public record ProbeCheck(
    String probe, Kind kind, double temperature, double altitude, String note) {

  /** In what a probe was held. */
  public enum Kind {
    /**
     * Crushed ice with water in its gaps. Its temperature is taken as known to 0.1 K; assumed:
     * well-made baths keep to hundredths, and kitchen ones have too much water.
     */
    ICE_BATH("ice-bath", 0.1),
    /**
     * Water at a full boil. Taken as known to 0.5 K; assumed: the weather moves pressure by about
     * 15 hPa, which is 0.4 K, and salts and the depth of the tip add some.
     */
    BOILING_WATER("boiling-water", 0.5);

    private final String word;
    private final double deviation;

    Kind(String word, double deviation) {
      this.word = word;
      this.deviation = deviation;
    }

    /** As files write it. */
    public String word() {
      return word;
    }

    /** Standard deviation of the temperature that is taken as known [K]. */
    public double deviation() {
      return deviation;
    }
  }

  private static final double LOWEST_ALTITUDE = -500;
  private static final double HIGHEST_ALTITUDE = 6000;

  /** Checks all of them. */
  public ProbeCheck {
    if (!ChannelFormat.isName(probe)) {
      throw new IllegalArgumentException(
          "probe must be lower-case letters, digits and hyphens, at most 40, was "
              + SourceText.quoted(probe));
    }
    Notes.checkTemperature("temperature", temperature);
    if (!(altitude >= LOWEST_ALTITUDE && altitude <= HIGHEST_ALTITUDE)) {
      throw new IllegalArgumentException("altitude must be in [-500, 6000] m, was " + altitude);
    }
    Notes.check("note", note, LogEvent.LONGEST_NOTE);
  }

  /** What a perfect probe would have shown [K]. */
  public double reference() {
    return switch (kind) {
      case ICE_BATH -> Temperatures.ZERO_CELSIUS;
      case BOILING_WATER -> SaturationPressure.boilingPoint(MoistAir.pressureAtAltitude(altitude));
    };
  }

  /** What the probe showed beyond {@link #reference()} [K]. */
  public double bias() {
    return temperature - reference();
  }
}
