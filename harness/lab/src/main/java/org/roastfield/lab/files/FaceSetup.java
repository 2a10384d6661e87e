package org.roastfield.lab.files;

import java.util.Locale;
import java.util.Optional;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.surface.CoalBed;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.surface.Wrap;

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
 * @param cover wrap, lid and the cut's own vapour
 * @param surfaceDrive factor of the water that a face holds and gets which dries, is fed and grows
 *     a crust in place of a constant wetness, by its surface ({@link SurfaceState#drive}); 0 for a
 *     constant wetness
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
    Optional<BedSetup> bed,
    CoverSetup cover,
    double surfaceDrive) {

  /** Whether the face dries, is fed and grows a crust, in place of a constant wetness. */
  public boolean drying() {
    return surfaceDrive > 0;
  }

  /** Surface law of these surroundings under a pressure [Pa]. */
  public SurfaceLaw law(double pressure) {
    return law(pressure, 1);
  }

  /**
   * The same of a face that holds and gets another amount of water.
   *
   * @param drive factor on it where the face dries, see {@code SurfaceWater}; a face of constant
   *     wetness has none
   */
  public SurfaceLaw law(double pressure, double drive) {
    return strayingLaw(Signal.constant(air), pressure, drive);
  }

  /**
   * The same with air that strays from the stated one; openings of the lid come on top of that.
   *
   * @param airTemperature [K]
   * @param drive as in {@link #law(double, double)}
   */
  public SurfaceLaw strayingLaw(Signal airTemperature, double pressure, double drive) {
    Chamber closed = chamber(airTemperature, pressure);
    return law(cover.lid().map(lid -> lid.over(closed)).orElse(closed), drive);
  }

  /**
   * Surface law with another air temperature, as logged: the walls keep their stated difference
   * from the air, and openings of the lid are taken to be in the log.
   *
   * @param airTemperature [K]
   * @param pressure [Pa]
   */
  public SurfaceLaw law(Signal airTemperature, double pressure) {
    return law(airTemperature, pressure, 1);
  }

  /**
   * The same of a face that holds and gets another amount of water.
   *
   * @param drive as in {@link #law(double, double)}
   */
  public SurfaceLaw law(Signal airTemperature, double pressure, double drive) {
    return law(chamber(airTemperature, pressure), drive);
  }

  private SurfaceLaw law(Chamber chamber, double drive) {
    return drying() ? dryingLaw(chamber, drive, 1) : constantLaw(chamber);
  }

  private Chamber chamber(Signal airTemperature, double pressure) {
    Signal vapour = Signal.constant(MoistAir.vapourPressure(humidityRatio, pressure));
    Signal wallTemperature = walls == air ? airTemperature : airTemperature.plus(walls - air);
    return new Chamber(airTemperature, wallTemperature, vapour, pressure);
  }

  private SurfaceLaw constantLaw(Chamber chamber) {
    double open = 1 - contact.map(ContactSetup::share).orElse(0.0);
    SurfaceLaw around = around(chamber, open);
    SurfaceLaw bare = contact.map(metal -> SurfaceLaw.sum(around, metal.law())).orElse(around);
    return cover.wrap().map(bare::under).orElse(bare);
  }

  /**
   * Surface law of a face that dries and is fed instead of one of constant wetness, and grows a
   * crust; walls, metal and coals as in {@link #law(Signal, double)}.
   *
   * @param airTemperature [K]
   * @param pressure [Pa]
   * @param drive factor of the water that the face holds and gets, see {@code SurfaceWater}, beside
   *     that of its surface
   * @param convection factor of the heat transfer coefficient
   */
  public SurfaceLaw dryingLaw(
      Signal airTemperature, double pressure, double drive, double convection) {
    return dryingLaw(chamber(airTemperature, pressure), drive, convection);
  }

  private SurfaceLaw dryingLaw(Chamber chamber, double drive, double convection) {
    double open = convection * (1 - contact.map(ContactSetup::share).orElse(0.0));
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
            bed,
            CoverSetup.NONE,
            0);
    DryingFace bare =
        DryingFace.ofMeat(
                dry.constantLaw(chamber),
                heatTransfer.times(open).vapour(chamber, waterActivity),
                drying() ? drive * surfaceDrive : drive,
                chamber.pressure())
            .into(cover.load());
    return cover.wrap().map(bare::under).orElse(bare);
  }

  /**
   * The same with other numbers; walls keep their difference from the air.
   *
   * @param convection factor of the heat transfer coefficient, and of the vapour that goes with it
   * @param warmerWalls what the walls are warmer [K]
   * @param humidity factor of the humidity ratio
   * @param contactHeat factor of the conductance of metal, at first and in the end
   * @param moister factor of a constant wetness; of no effect on a face that dries
   * @throws IllegalArgumentException if the wetness would be above 1
   */
  public FaceSetup varied(
      double convection, double warmerWalls, double humidity, double contactHeat, double moister) {
    double wet = drying() ? wetness : moister * wetness;
    if (!(wet <= 1)) {
      throw new IllegalArgumentException("wetness must be at most 1, was " + wet);
    }
    return new FaceSetup(
        air,
        walls + warmerWalls,
        humidity * humidityRatio,
        heatTransfer.times(convection),
        emissivity,
        wet,
        waterActivity,
        contact.map(metal -> metal.times(contactHeat)),
        bed,
        cover,
        surfaceDrive);
  }

  /** The same under another wrap, or none. */
  public FaceSetup wrapped(Optional<Wrap> wrap) {
    return new FaceSetup(
        air,
        walls,
        humidityRatio,
        heatTransfer,
        emissivity,
        wetness,
        waterActivity,
        contact,
        bed,
        new CoverSetup(wrap, cover.lid(), cover.load()),
        surfaceDrive);
  }

  private SurfaceLaw around(Chamber chamber, double open) {
    if (bed.isEmpty()) {
      return air(chamber, open, emissivity * open);
    }
    CoalBed coals = new CoalBed(bed.get().viewFactor(), Signal.constant(bed.get().temperature()));
    return SurfaceLaw.sum(
        air(chamber, open, 0), coals.withWalls(emissivity * open, chamber.wallTemperature()));
  }

  private SurfaceLaw air(Chamber chamber, double open, double seen) {
    HeatTransfer free = heatTransfer.times(open);
    return wetness > 0 && cover.load().isLoaded()
        ? free.around(chamber, seen, wetness, waterActivity, cover.load().load())
        : free.around(chamber, seen, wetness, waterActivity);
  }

  /** How wet the face is, in words. */
  public String wetnessWords() {
    return drying()
        ? surfaceDrive == 1
            ? "as it dries and is fed"
            : String.format(
                Locale.ROOT, "as it dries and is fed, drive %.2f (assumed)", surfaceDrive)
        : String.format(Locale.ROOT, "%.2f", wetness);
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
        Optional.empty(),
        cover,
        surfaceDrive);
  }
}
