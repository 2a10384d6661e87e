/**
 * Pictures and pages: each report is one HTML file that needs no script, no network and no other
 * file.
 *
 * <p>{@link org.roastfield.lab.report.SimulationReport} and {@link
 * org.roastfield.lab.report.ReplayReport} gather plain data (curves, fields, tables); figures draw
 * them as SVG, once for wide and once for narrow screens, and every figure carries the numbers it
 * was drawn from as a table. Same data, same bytes.
 */
@NullMarked
package org.roastfield.lab.report;

import org.jspecify.annotations.NullMarked;
