package org.roastfield.lab.files;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.surface.Touch;

/**
 * Hot metal against a face.
 *
 * @param plateTemperature [K]
 * @param conductance contact conductance of the touched part, in the end if it settles [W/(m²·K)]
 * @param share of the face that is touched, in (0, 1]; the rest sees the chamber
 * @param settling how it begins, if it is not the same all the time
 */
public record ContactSetup(
    double plateTemperature, double conductance, double share, Optional<Settling> settling) {

  /** Contact that is the same all the time. */
  public ContactSetup(double plateTemperature, double conductance, double share) {
    this(plateTemperature, conductance, share, Optional.empty());
  }

  /**
   * Contact from its beginning, at each turn anew.
   *
   * @param first conductance at first [W/(m²·K)]
   * @param time in which it settles [s]
   * @param drop by which the load cools the metal in the end [K]
   * @param cooling time in which it does [s]
   */
  public record Settling(double first, double time, double drop, double cooling) {}

  /** The same with conductances multiplied. */
  ContactSetup times(double factor) {
    return new ContactSetup(
        plateTemperature,
        factor * conductance,
        share,
        settling.map(
            begin ->
                new Settling(factor * begin.first(), begin.time(), begin.drop(), begin.cooling())));
  }

  SurfaceLaw law() {
    Signal metal = Signal.constant(plateTemperature);
    return settling
        .<SurfaceLaw>map(
            begin ->
                new Touch(
                    share,
                    begin.first(),
                    conductance,
                    begin.time(),
                    metal,
                    begin.drop(),
                    begin.cooling(),
                    0))
        .orElseGet(() -> new Contact(conductance * share, metal));
  }

  /** Conductance in words, such as "500 to 250 W/(m²·K) in 30 s, 50 K cooler in 60 s". */
  public String words() {
    String lasting = number(conductance) + " W/(m²·K)";
    return settling
        .map(
            begin ->
                number(begin.first())
                    + " to "
                    + lasting
                    + " in "
                    + number(begin.time())
                    + " s"
                    + cooled(begin))
        .orElse(lasting);
  }

  private static String cooled(Settling begin) {
    return begin.drop() == 0
        ? ""
        : ", " + number(begin.drop()) + " K cooler in " + number(begin.cooling()) + " s";
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value).round(new MathContext(4)).stripTrailingZeros().toPlainString();
  }
}
