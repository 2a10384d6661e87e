package org.roastfield.lab.files;

import java.util.Optional;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.surface.CoalBed;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * What a cook file states about the surroundings of one face in one stage.
 *
 * @param air temperature of the air [K]
 * @param walls temperature that the face sees by radiation [K]
 * @param humidityRatio [kg water / kg dry air]
 * @param heatTransfer by convection
 * @param emissivity of the face in [0, 1]
 * @param wetness of the face in [0, 1]
 * @param waterActivity of the face in (0, 1]
 * @param contact hot metal against the face
 * @param bed glowing coals that the face sees
 */
public record FaceSetup(
    double air,
    double walls,
    double humidityRatio,
    HeatTransfer heatTransfer,
    double emissivity,
    double wetness,
    double waterActivity,
    Optional<ContactSetup> contact,
    Optional<BedSetup> bed) {

  /** Surface law of these surroundings under a pressure [Pa]. */
  public SurfaceLaw law(double pressure) {
    return law(Signal.constant(air), pressure);
  }

  /**
   * Surface law with another air temperature; the walls keep their stated difference from the air.
   *
   * @param airTemperature [K]
   * @param pressure [Pa]
   */
  public SurfaceLaw law(Signal airTemperature, double pressure) {
    Signal vapour = Signal.constant(MoistAir.vapourPressure(humidityRatio, pressure));
    Signal wallTemperature = walls == air ? airTemperature : airTemperature.plus(walls - air);
    Chamber chamber = new Chamber(airTemperature, wallTemperature, vapour, pressure);
    double open = 1 - contact.map(ContactSetup::share).orElse(0.0);
    SurfaceLaw around = around(chamber, open);
    return contact.map(metal -> SurfaceLaw.sum(around, law(metal))).orElse(around);
  }

  /**
   * Surface law of a face that dries and is fed instead of one of constant wetness, and grows a
   * crust; walls, metal and coals as in {@link #law(Signal, double)}.
   *
   * @param airTemperature [K]
   * @param pressure [Pa]
   * @param drive factor of the water that the face holds and gets, see {@code SurfaceWater}
   * @param convection factor of the stated heat transfer coefficient
   * @throws IllegalArgumentException if heat transfer is not a stated coefficient
   */
  public SurfaceLaw dryingLaw(
      Signal airTemperature, double pressure, double drive, double convection) {
    if (!(heatTransfer instanceof HeatTransfer.Stated stated)) {
      throw new IllegalArgumentException(
          "heat-transfer of a face that dries must be a number, was " + heatTransfer.words());
    }
    double open = convection * (1 - contact.map(ContactSetup::share).orElse(0.0));
    double h = stated.coefficient() * open;
    Signal vapour = Signal.constant(MoistAir.vapourPressure(humidityRatio, pressure));
    FaceSetup dry =
        new FaceSetup(
            air,
            walls,
            humidityRatio,
            heatTransfer.times(convection),
            emissivity,
            0,
            waterActivity,
            contact,
            bed);
    return DryingFace.ofMeat(
        dry.law(airTemperature, pressure),
        Evaporation.of(1, h, waterActivity, vapour, pressure),
        drive,
        pressure);
  }

  private SurfaceLaw around(Chamber chamber, double open) {
    HeatTransfer air = heatTransfer.times(open);
    if (bed.isEmpty()) {
      return air.around(chamber, emissivity * open, wetness, waterActivity);
    }
    CoalBed coals = new CoalBed(bed.get().viewFactor(), Signal.constant(bed.get().temperature()));
    return SurfaceLaw.sum(
        air.around(chamber, 0, wetness, waterActivity),
        coals.withWalls(emissivity * open, chamber.wallTemperature()));
  }

  /** The same turned away from hot metal and coals. */
  public FaceSetup turnedAway() {
    return new FaceSetup(
        air,
        walls,
        humidityRatio,
        heatTransfer,
        emissivity,
        wetness,
        waterActivity,
        Optional.empty(),
        Optional.empty());
  }

  private static SurfaceLaw law(ContactSetup metal) {
    return new Contact(
        metal.conductance() * metal.share(), Signal.constant(metal.plateTemperature()));
  }
}
