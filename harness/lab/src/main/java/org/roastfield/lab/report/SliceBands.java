package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.roastfield.core.outcome.Colour;
import org.roastfield.core.outcome.CrossSection;
import org.roastfield.core.outcome.Doneness;
import org.roastfield.core.outcome.DonenessScale;
import org.roastfield.lab.timeline.Inside;
import org.roastfield.lab.timeline.TemperatureScale;

/**
 * What a slice is divided into.
 *
 * @param values over the cross-section
 * @param names of the bands, from low to high values
 * @param starts value at which each begins, increasing
 * @param bounds the same as text
 * @param shares of the volume
 * @param note on the ring, for the table
 * @param text of a value
 */
record SliceBands(
    CrossSection values,
    List<String> names,
    List<Double> starts,
    List<String> bounds,
    List<Double> shares,
    String note,
    DoubleFunction<String> text) {

  private static final double TRACE = 0.0005;
  private static final int DEPTHS = 8;

  /** By the names of a scale. */
  static SliceBands of(Doneness doneness, CrossSection highest, TemperatureScale scale) {
    List<DonenessScale.Band> bands = doneness.scale().bands();
    return new SliceBands(
        highest,
        bands.stream().map(DonenessScale.Band::name).toList(),
        bands.stream().map(DonenessScale.Band::from).toList(),
        bands.stream()
            .map(band -> band.from() == 0 ? Numbers.NONE : Numbers.text(band.from(), scale))
            .toList(),
        doneness.shares(),
        "; "
            + Inside.ringName(doneness)
            + " "
            + Numbers.decimal(1000 * doneness.upperRing(), 1)
            + " mm"
            + (doneness.lowerRing() > 0
                ? " above, " + Numbers.decimal(1000 * doneness.lowerRing(), 1) + " mm below"
                : ""),
        kelvin -> Numbers.text(kelvin, scale));
  }

  /** By the share of the pigment that has changed. */
  static SliceBands of(Colour colour) {
    return new SliceBands(
        colour.changed(),
        List.of("looks rare", "looks between", "looks well done"),
        List.of(0.0, Colour.LOOKS_RARE, Colour.LOOKS_WELL_DONE),
        List.of(Numbers.NONE, "6.5 % changed", "93 % changed"),
        List.of(colour.rare(), colour.between(), colour.wellDone()),
        "",
        share -> Numbers.decimal(100 * share, 1) + " %");
  }

  int size() {
    return names.size();
  }

  /** Index of the band of a value. */
  int indexAt(double value) {
    int i = size() - 1;
    while (i > 0 && value < starts.get(i)) {
      i--;
    }
    return i;
  }

  /** Whether a band has enough of the volume to be named. */
  boolean shows(int band) {
    return shares.get(band) > TRACE;
  }

  /** Values from the surface, or the upper face, inwards. */
  Table depths(String of) {
    double face = values.position(values.size() - 1);
    double deepest = face - values.position(0);
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i <= DEPTHS; i++) {
      double depth = deepest * i / DEPTHS;
      rows.add(List.of(Numbers.decimal(1000 * depth, 1), text.apply(values.at(face - depth))));
    }
    return Table.ofNumbers("By depth" + of, List.of("depth, mm", "there"), rows);
  }

  Table table(String of) {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < size(); i++) {
      rows.add(List.of(names.get(i), bounds.get(i), Numbers.decimal(100 * shares.get(i), 1)));
    }
    return Table.ofNumbers(
        "Shares of the volume" + of + note, List.of("band", "from", "share, %"), rows);
  }
}
