package org.roastfield.lab.files;

import java.util.Optional;
import org.roastfield.core.material.ChoiOkos;
import org.roastfield.core.material.Composition;
import org.roastfield.core.material.Material;

/**
 * What a cut is made of.
 *
 * @param material for the core
 * @param composition it follows from, if it follows from one
 */
record Substance(Material material, Optional<Composition> composition) {

  /**
   * Density of the cut as it is weighed and measured [kg/m³]: by its composition at a temperature
   * [K], else as stated.
   */
  double densityAt(double temperature) {
    return composition
        .map(parts -> ChoiOkos.density(parts, temperature))
        .orElseGet(material::density);
  }
}
