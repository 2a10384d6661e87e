package org.roastfield.core.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.roastfield.core.support.UniformDraws;
import org.roastfield.core.surface.FaceRows.Face;

/** Rows against the laws one by one, for any numbers that a cook may have. */
@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class StandardRowsPropertiesTest {

  @Property
  void rows_areTheLawOrHaveNoValueWithIt(
      @ForAll @DoubleRange(min = 0, max = 1200) double conductance,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(6) double wetness,
      @ForAll @DoubleRange(min = 0.01, max = 1) @Scale(6) double activity,
      @ForAll @DoubleRange(min = 0, max = 60_000) double vapour,
      @ForAll @DoubleRange(min = 65_000, max = 105_000) double pressure,
      @ForAll @DoubleRange(min = 240, max = 520) @Scale(9) double face) {
    SurfaceLaw law = law(conductance, wetness, activity, vapour, pressure);
    Face rows = FaceRows.alone(law, face);
    Face scalar = FaceRows.scalar(law, face);
    if (Double.isNaN(scalar.heatFlux())) {
      assertTrue(Double.isNaN(rows.heatFlux()), () -> "rows say " + rows);
      return;
    }
    double terms = 2 * conductance * 600 + 1e5 + Math.abs(scalar.heatFlux());
    assertEquals(scalar.heatFlux(), rows.heatFlux(), 4e-15 * terms);
    assertEquals(scalar.slope(), rows.slope(), 4e-15 * (1e4 + Math.abs(scalar.slope())));
    assertEquals(scalar.evaporation(), rows.evaporation());
    assertEquals(scalar.evaporationSlope(), rows.evaporationSlope());
  }

  @Property
  void neighbours_changeNoBit(
      @ForAll @DoubleRange(min = 0, max = 1200) double conductance,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(6) double wetness,
      @ForAll @DoubleRange(min = 240, max = 520) @Scale(9) double one,
      @ForAll @DoubleRange(min = 240, max = 520) @Scale(9) double two,
      @ForAll @DoubleRange(min = 240, max = 520) @Scale(9) double three) {
    SurfaceLaw law = law(conductance, wetness, 0.98, 1500, 1e5);
    SurfaceLaw dry = new Contact(conductance, Signal.constant(500));
    Face[] together = new FaceRows(List.of(dry, law, dry, law)).at(one, two, three, one);
    assertEquals(FaceRows.alone(dry, one), together[0]);
    assertEquals(FaceRows.alone(law, two), together[1]);
    assertEquals(FaceRows.alone(dry, three), together[2]);
    assertEquals(FaceRows.alone(law, one), together[3]);
  }

  private static SurfaceLaw law(
      double conductance, double wetness, double activity, double vapour, double pressure) {
    return SurfaceLaw.sum(
        new Convection(conductance, Signal.constant(400)),
        new Radiation(0.9, Signal.constant(450)),
        Evaporation.of(wetness, 20, activity, Signal.constant(vapour), pressure));
  }
}
