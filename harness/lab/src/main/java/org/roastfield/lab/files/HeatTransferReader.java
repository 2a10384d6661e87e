package org.roastfield.lab.files;

import org.roastfield.core.air.DryAir;
import org.roastfield.core.shape.Compact;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.surface.FaceForm;
import org.roastfield.core.surface.FilmCoefficient;

/** Reads how air carries heat to a face of a cut. */
final class HeatTransferReader {

  private static final String STILL_AIR = "still air";

  private final CutSetup cut;
  private final double pressure;

  HeatTransferReader(CutSetup cut, double pressure) {
    this.cut = cut;
    this.pressure = pressure;
  }

  /** What the chamber states for a side of the cut; {@code air} is its temperature [K]. */
  HeatTransfer read(Section chamber, Side side, double air) {
    Entry entry = chamber.required("heat-transfer");
    if (!entry.isSection() && !entry.text().equals(STILL_AIR)) {
      return new HeatTransfer.Stated(coefficient(entry));
    }
    if (!(air >= DryAir.LOWEST && air <= DryAir.HIGHEST)) {
      throw entry.error(
          "a coefficient, such as 7 W/(m²·K), for air that is not from "
              + Dimension.TEMPERATURE.text(DryAir.LOWEST)
              + " to "
              + Dimension.TEMPERATURE.text(DryAir.HIGHEST));
    }
    double wind = 0;
    double factor = 1;
    if (entry.isSection()) {
      Section section = entry.section("wind", "factor");
      wind = section.optional("wind").map(e -> e.quantity(Dimension.SPEED, 0, 30)).orElse(0.0);
      factor = section.optional("factor").map(e -> e.quantity(Dimension.SHARE, 0, 10)).orElse(1.0);
    }
    return new HeatTransfer.ByCorrelation(film(entry, side, wind).times(factor));
  }

  private static double coefficient(Entry entry) {
    if (entry.text().chars().noneMatch(Character::isDigit)) {
      throw entry.error(
          STILL_AIR + ", a coefficient, such as 7 W/(m²·K), or keys and values (wind, factor)");
    }
    return entry.quantity(Dimension.HEAT_TRANSFER, 0, 500);
  }

  private FilmCoefficient film(Entry entry, Side side, double wind) {
    FaceForm form = form(side);
    double length = length(entry);
    return entry.guard(() -> FilmCoefficient.windyAir(form, length, wind, pressure));
  }

  private FaceForm form(Side side) {
    return switch (side) {
      case UPPER -> FaceForm.UPPER_FACE;
      case LOWER -> FaceForm.LOWER_FACE;
      case ALL_ROUND -> isLong() ? FaceForm.HORIZONTAL_CYLINDER : FaceForm.SPHERE;
    };
  }

  /** A short cylinder or a box counts as the lying cylinder that air has as far to go around. */
  private boolean isLong() {
    return cut.cut().shape() instanceof Cylinder || cut.cut().shape() instanceof Compact;
  }

  private double length(Entry entry) {
    if (cut.cut().shape() instanceof Compact compact) {
      return compact.roundedDiameter();
    }
    if (!(cut.cut().shape() instanceof Slab)) {
      return cut.cut().shape().thickness();
    }
    return cut.areaPerPerimeter()
        .orElseThrow(
            () ->
                entry.error(
                    "a coefficient, such as 7 W/(m²·K), for a slab whose length and width are not"
                        + " both stated"));
  }
}
