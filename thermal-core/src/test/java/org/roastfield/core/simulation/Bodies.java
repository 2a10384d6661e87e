package org.roastfield.core.simulation;

import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.ChoiOkos;
import org.roastfield.core.material.Composition;
import org.roastfield.core.material.Material;
import org.roastfield.core.reference.RadialMode;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.shape.Sphere;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/** Bodies, materials and runs that the tests of this package share. */
final class Bodies {

  static final double CONDUCTIVITY = 0.48;
  static final double DENSITY = 1060;
  static final double HEAT_CAPACITY = 3450;
  static final double DIFFUSIVITY = CONDUCTIVITY / (DENSITY * HEAT_CAPACITY);
  static final double START = Temperatures.celsius(5);

  /** Constant properties near those of lean meat. */
  static final Material CONSTANT =
      Material.constant("constant", CONDUCTIVITY, DENSITY, HEAT_CAPACITY);

  /** Properties that depend on temperature. */
  static final Material LOIN =
      ChoiOkos.material("pork loin", Composition.ofMeat(0.722, 0.214, 0.057, 0.0105));

  private Bodies() {}

  /** Body whose half thickness or radius is {@code radius} [m]. */
  static Shape shape(RadialMode mode, double radius) {
    return switch (mode) {
      case SLAB -> Slab.ofHalfThickness(radius);
      case CYLINDER -> Cylinder.ofRadius(radius);
      case SPHERE -> Sphere.ofRadius(radius);
    };
  }

  /** Time at which a body of {@link #CONSTANT} reaches a Fourier number [s]. */
  static double seconds(double fourierNumber, double radius) {
    return fourierNumber * radius * radius / DIFFUSIVITY;
  }

  /** Convection with a Biot number on a body of {@link #CONSTANT}. */
  static SurfaceLaw convection(double biotNumber, double radius, double airTemperature) {
    return new Convection(biotNumber * CONDUCTIVITY / radius, Signal.constant(airTemperature));
  }

  /** A cook of one stage that treats a body of {@link #CONSTANT} alike all round. */
  static Cook oneStage(Shape shape, SurfaceLaw law, double duration) {
    return Cook.of(
        new Cut(shape, CONSTANT, START), Stage.allRound("heat", law, StageEnd.after(duration)));
  }

  /** Heat that a square metre of face holds in each kelvin of the cut [J/(m²·K)]. */
  static double heldPerKelvin(Cook cook) {
    Material material = cook.cut().material();
    return material.density()
        * material.heatCapacity().at(Temperatures.celsius(60))
        * cook.cut().shape().volumePerArea();
  }

  /** The result of a cook that must complete. */
  static SimulationResult run(Settings settings, Cook cook) {
    return Simulator.with(settings).run(cook).orElseThrow();
  }

  static Settings accuracy(double kelvin) {
    return Settings.withDefaults().withAccuracy(kelvin);
  }
}
