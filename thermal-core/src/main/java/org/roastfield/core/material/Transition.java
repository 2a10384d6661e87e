package org.roastfield.core.material;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.roastfield.core.units.Temperatures;

/**
 * A transition of fat or protein and the heat it takes up, eq. (40).
 *
 * <p><b>Fat of mammals</b>: 120 kJ/kg of fat from 10 to 50 °C. Of it 111 between 20 and 50 °C,
 * where 100 to 140 is quoted from memory without a source. From 5 to 25 °C it adds 1.5 kJ/(kg·K) to
 * the 2.0 of liquid fat; rendered beef fat and lard had 3.3 to 5.8 in all (Morley's tables in
 * [JamesJames2002]). Status: literature for the size, assumed for the shape.
 *
 * <p><b>Fat of birds</b>: 70 kJ/kg of fat from 0 to 30 °C, where chicken fat is melted. With 11 %
 * water that makes 4.3 kJ/(kg·K) from 0 to 15 °C; 4.44 was measured (the same tables). Status:
 * assumed from that one value.
 *
 * <p><b>Proteins of mammals and birds</b>: 16 kJ/kg of protein, from 3.0 to 3.9 kJ/kg of beef
 * [FindlayStanley1984], which is 14 to 18; pork gave 2.7 kJ/kg. Two ranges, about the peaks of
 * myosin (54-58 °C) and of sarcoplasmic proteins with collagen (62-70 °C), and about that of actin
 * (79-83 °C) [FindlayStanley1984], [MurphyMarksMarcy1998]. Status: literature for sum and peaks,
 * assumed for shares and widths.
 *
 * <p><b>Proteins of fish</b>: the same sum; in cod all is over between 35 and 66 °C, actin between
 * 58 and 68 °C [Skipnes2008]. Status: assumed but for the ranges.
 *
 * @param name what changes
 * @param part mass fraction of what changes
 * @param heat [J per kg of that part]
 * @param lowest where it begins [°C]
 * @param highest where it is complete [°C]
 */
record Transition(
    String name, ToDoubleFunction<Composition> part, double heat, double lowest, double highest) {

  private static final double DENATURATION = 16e3;

  private static final List<Transition> MUSCLE =
      List.of(
          protein("myosin, sarcoplasmic proteins and collagen", 0.7, 50, 72),
          protein("actin", 0.3, 74, 88));

  static final List<Transition> OF_MEAT = with(fat(120e3, 10, 50), MUSCLE);

  static final List<Transition> OF_POULTRY = with(fat(70e3, 0, 30), MUSCLE);

  static final List<Transition> OF_FISH =
      List.of(protein("myosin", 0.6, 35, 55), protein("actin", 0.4, 58, 70));

  /** Latent heat of a food, if it has any of this part. */
  Optional<LatentHeat> of(Composition composition) {
    double perKilogram = part.applyAsDouble(composition) * heat;
    if (perKilogram == 0) {
      return Optional.empty();
    }
    return Optional.of(
        new LatentHeat(
            name, perKilogram, Temperatures.celsius(lowest), Temperatures.celsius(highest)));
  }

  private static Transition fat(double heat, double lowest, double highest) {
    return new Transition("fat", Composition::fat, heat, lowest, highest);
  }

  private static Transition protein(String name, double share, double lowest, double highest) {
    return new Transition(name, Composition::protein, share * DENATURATION, lowest, highest);
  }

  private static List<Transition> with(Transition first, List<Transition> others) {
    return Stream.concat(Stream.of(first), others.stream()).toList();
  }
}
