package org.roastfield.lab.files;

import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;

/** Reads the surroundings of a face. What a face does not state, its stage does. */
final class FaceReader {

  private final CutSetup cut;
  private final double pressure;

  FaceReader(CutSetup cut, double pressure) {
    this.cut = cut;
    this.pressure = pressure;
  }

  /** Surroundings that a stage states for all of the surface. */
  FaceSetup ofStage(Section stage) {
    return of(stage, stage);
  }

  /** Surroundings of one face, which may state its own chamber, contact, wetness and emissivity. */
  FaceSetup ofFace(Entry face, Section stage) {
    return of(face.section("chamber", "wetness", "emissivity", "contact"), stage);
  }

  private FaceSetup of(Section face, Section stage) {
    Entry wetnessEntry = inherited("wetness", face, stage);
    double wetness = wetnessEntry.quantity(Dimension.SHARE, 0, 1);
    double emissivity =
        face.optional("emissivity")
            .or(() -> stage.optional("emissivity"))
            .map(entry -> entry.quantity(Dimension.SHARE, 0, 1))
            .orElse(cut.emissivity());
    Section chamber =
        inherited("chamber", face, stage)
            .section("air", "walls", "humidity-ratio", "heat-transfer");
    double air = chamber.quantity("air", Dimension.TEMPERATURE, 233.15, 873.15);
    double walls =
        chamber
            .optional("walls")
            .map(entry -> entry.quantity(Dimension.TEMPERATURE, 233.15, 1473.15))
            .orElse(air);
    return new FaceSetup(
        air,
        walls,
        humidityRatio(chamber, air, wetness),
        chamber.quantity("heat-transfer", Dimension.HEAT_TRANSFER, 0, 500),
        emissivity,
        wetness,
        cut.waterActivity(),
        face.optional("contact").or(() -> stage.optional("contact")).map(this::contact));
  }

  private static Entry inherited(String key, Section face, Section stage) {
    return face.optional(key).orElseGet(() -> stage.required(key));
  }

  /** Dry faces need no humidity. */
  private double humidityRatio(Section chamber, double air, double wetness) {
    if (wetness == 0 && !chamber.has("humidity-ratio")) {
      return 0;
    }
    Entry entry = chamber.required("humidity-ratio");
    double ratio = entry.quantity(Dimension.HUMIDITY_RATIO, 0, 2);
    double saturation =
        air >= SaturationPressure.LOWEST && air <= SaturationPressure.HIGHEST
            ? SaturationPressure.at(air)
            : Double.POSITIVE_INFINITY;
    if (!(MoistAir.vapourPressure(ratio, pressure) <= saturation)) {
      double most = MoistAir.MOLAR_MASS_RATIO * saturation / (pressure - saturation);
      throw entry.error(
          "at most "
              + Dimension.HUMIDITY_RATIO.text(most)
              + ", where air of "
              + Dimension.TEMPERATURE.text(air)
              + " is saturated");
    }
    return ratio;
  }

  private ContactSetup contact(Entry entry) {
    Section section = entry.section("plate", "conductance", "share");
    return new ContactSetup(
        section.quantity("plate", Dimension.TEMPERATURE, 233.15, 873.15),
        section.quantity("conductance", Dimension.HEAT_TRANSFER, 0, 5000),
        section
            .optional("share")
            .map(share -> share.quantity(Dimension.SHARE, 0.001, 1))
            .orElse(1.0));
  }
}
