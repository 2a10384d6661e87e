/**
 * Reading of cook files and cook logs: units beside numbers, and errors that name file, line and
 * column.
 *
 * <p>A <b>cook file</b> is one YAML 1.2 document of at most 1 MiB without anchors, aliases and
 * tags. Its keys:
 *
 * <ul>
 *   <li>{@code roastfield: cook/1}, {@code name}, {@code starts} (clock time at which the cut goes
 *       on), {@code serves} (clock time at which it is on the table), {@code made-up} (true or
 *       false), {@code altitude}, {@code cooker} (name of a profile {@code cookers/NAME.json}
 *       beside the file or up to two folders above)
 *   <li>{@code cut}: {@code food}, {@code shape}: slab ({@code thickness}), cylinder ({@code
 *       diameter} or {@code girth}) or sphere ({@code diameter} or {@code girth}), with {@code
 *       length} and {@code width} for sums over the whole cut; finite-cylinder ({@code diameter} or
 *       {@code girth}, {@code length}) or box ({@code thickness}, {@code width}, {@code length}),
 *       with {@code biot-number}; or taper ({@code diameters} or {@code girths} at equal spacings,
 *       {@code length}); {@code weight} instead of any one of the sizes, which then follows from it
 *       by the density of the food at its start, or beside all of them, which it must agree with;
 *       {@code start-temperature}, {@code material} (a name of the catalogue {@link
 *       org.roastfield.core.material.Materials}, or {@code name} and either {@code composition} or
 *       {@code conductivity}, {@code density}, {@code heat-capacity}), {@code emissivity}, {@code
 *       water-activity}
 *   <li>{@code probes}: a list of {@code name}, {@code depth} below the surface or how far {@code
 *       off-centre}, and for what they show {@code response} time, {@code stem} ({@code diameter}
 *       or {@code fin-length}, {@code excess}), {@code bias} and {@code resolution}
 *   <li>{@code stages}: a list of {@code name}, {@code chamber} ({@code air}, {@code walls}, {@code
 *       humidity-ratio} or {@code draught} with {@code fuel}, {@code burn-rate} and {@code
 *       excess-air} or an {@code air-flow}, {@code outside-humidity-ratio}, {@code air-volume} and
 *       how many such {@code pieces} there are, {@code heat-transfer} by convection: a coefficient,
 *       {@code still air}, or {@code wind} and {@code factor}, for which a slab states its length
 *       and width), {@code wetness} (a share, or {@code drying}), {@code baste} (water put on a
 *       face that dries), {@code emissivity}, {@code contact} ({@code plate}, {@code conductance},
 *       {@code share} of the face: of a round cut with {@code turns} that of the side which lies on
 *       the metal, as bars do, without them that of its circumference; with {@code
 *       first-conductance}, {@code settling-time}, {@code plate-drop} or {@code cooling-time}, or
 *       without a conductance, contact that begins high and settles, at each turn anew) or {@code
 *       board} ({@code temperature}, {@code conductance}, {@code share}), {@code coal-bed} below a
 *       lower face or a round cut ({@code temperature} and {@code view-factor}, or {@code diameter}
 *       and {@code distance} under a slab of stated length and width), {@code wrap} (foil, paper,
 *       tent), {@code lid} ({@code open-air}, {@code open-walls}, {@code open-humidity-ratio}, and
 *       {@code openings} with {@code at} and {@code for}), {@code faces} ({@code upper} and {@code
 *       lower} of a slab, where they differ), and either {@code turns} ({@code count}, {@code
 *       every}, {@code sides}, or for a slab {@code at} times and {@code until}) or {@code end};
 *       instead of chamber and face an insulated {@code box} ({@code room}, {@code loss})
 *   <li>{@code end}: {@code after} a time; {@code at} a clock time; {@code core} at a temperature;
 *       or {@code probe} with {@code reaches} or {@code falls-to}; the last two with {@code
 *       at-latest}
 *   <li>{@code wishes}: {@code doneness} on a named {@code scale} (trade, research), of a taper for
 *       each station ({@code first-end}, {@code middle}, {@code last-end}); {@code crust}; {@code
 *       ring}, how deep at most it may be done beyond that
 * </ul>
 *
 * <p>{@link org.roastfield.lab.files.CookFileWriter} writes them. The JSON Schema of cook files in
 * {@code datasets/schema} says the same to editors.
 *
 * <p>A <b>cook log</b> is described at {@link org.roastfield.lab.files.CookLogReader}.
 *
 * <p>A <b>log package</b> is described at {@link org.roastfield.lab.files.LogPackageReader}. Its
 * tables {@code events.csv}, {@code spots.csv} and {@code checks.csv} are written by people, with
 * units beside the numbers.
 *
 * <p>Names and other text of a file are whatever somebody wrote: they are free of control
 * characters, and must be escaped wherever markup is written.
 */
@NullMarked
package org.roastfield.lab.files;

import org.jspecify.annotations.NullMarked;
