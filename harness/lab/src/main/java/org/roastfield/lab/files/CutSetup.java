package org.roastfield.lab.files;

import java.util.List;
import java.util.Optional;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.outcome.CutKind;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.shape.Taper;

/**
 * What a cook file states about its cut.
 *
 * @param cut for the core
 * @param food kind of food
 * @param emissivity of the surface where a stage states no other
 * @param waterActivity of the surface
 * @param extent size of the whole cut, if stated
 * @param areaPerPerimeter of a slab's face [m], if its length and width are stated
 * @param taper whose thickest station is the cut, if the file states one
 * @param surface what was done to it
 * @param handling what was done to the meat before, if stated
 * @param facts statements for display
 */
record CutSetup(
    Cut cut,
    Food food,
    double emissivity,
    double waterActivity,
    Optional<Extent> extent,
    Optional<Double> areaPerPerimeter,
    Optional<Taper> taper,
    SurfaceState surface,
    Optional<CutKind> handling,
    List<Fact> facts) {

  CutSetup {
    facts = List.copyOf(facts);
  }

  /** Surface of the whole cut [m²], both faces of a slab; empty if its size is not stated. */
  Optional<Double> evaporatingArea() {
    double faces = cut.shape() instanceof Slab ? 2 : 1;
    return extent.map(size -> faces * size.area());
  }
}
