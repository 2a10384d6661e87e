package org.roastfield.core.material;

import java.util.List;
import org.roastfield.core.internal.Check;

/**
 * What a cut is made of: a name, a kind, a composition, and where the composition is from.
 *
 * @param name shown in messages and reports
 * @param kind decides about freezing, melting and denaturation
 * @param composition mass fractions, raw
 * @param source of the composition
 */
public record Foodstuff(String name, FoodKind kind, Composition composition, String source) {

  /** Share of fat above which the spreads are those of fatty cuts. */
  private static final double FATTY = 0.15;

  /**
   * @throws IllegalArgumentException if {@code name} or {@code source} is blank
   */
  public Foodstuff {
    Check.notBlank("name", name);
    Check.notBlank("source", source);
  }

  /** A foodstuff whose composition the caller states. */
  public static Foodstuff of(String name, FoodKind kind, Composition composition) {
    return new Foodstuff(name, kind, composition, "stated by the caller");
  }

  /** Heats of melting and denaturation, eqs. (39)-(40). */
  public List<LatentHeat> latentHeats() {
    return kind.latentHeats(composition);
  }

  /** Properties by [ChoiOkos1986], eqs. (4)-(6), latent heats and freezing point by the kind. */
  public Material material() {
    Material sensible = ChoiOkos.material(name, composition);
    return new Material(
        name,
        sensible.density(),
        sensible.conductivity(),
        sensible.heatCapacity(),
        latentHeats(),
        kind.freezingPoint(),
        new Moisture(
            composition.water() * sensible.density(), composition.water(), kind.holding()));
  }

  /** How far one piece may be from another of the same name. */
  public Spread spread() {
    return composition.fat() > FATTY ? Spread.FATTY_CUT : Spread.LEAN_CUT;
  }

  /**
   * Relative spreads between pieces and animals, one standard deviation. Status: assumed, but for
   * the conductivity of meat, by which composition models miss measurements by 7 %
   * [BaghekhandanOkos1981]; for vegetables nothing better is known.
   *
   * @param water of the mass fraction of water
   * @param fat of the mass fraction of fat
   * @param conductivity of k, at a given composition
   * @param diffusivity of k/(ρ c), composition included
   */
  public record Spread(double water, double fat, double conductivity, double diffusivity) {

    private static final Spread LEAN_CUT = new Spread(0.03, 0.5, 0.07, 0.07);
    private static final Spread FATTY_CUT = new Spread(0.03, 0.5, 0.10, 0.09);

    /**
     * @throws IllegalArgumentException if a spread is outside [0, 1]
     */
    public Spread {
      Check.inRange("water", water, 0, 1);
      Check.inRange("fat", fat, 0, 1);
      Check.inRange("conductivity", conductivity, 0, 1);
      Check.inRange("diffusivity", diffusivity, 0, 1);
    }
  }
}
