/**
 * Many cooks at once: a distribution of outcomes instead of one number.
 *
 * <p>{@link org.roastfield.core.ensemble.EnsembleSimulator} computes members that a caller draws;
 * {@link org.roastfield.core.ensemble.EnsembleResult} holds a few numbers of each and their {@link
 * org.roastfield.core.ensemble.Distribution}s. Members share one grid over relative depth, that of
 * a template cook; a member's numbers depend on its own cook, the template and the settings alone,
 * never on its neighbours, their number, their order or the threads.
 */
@NullMarked
package org.roastfield.core.ensemble;

import org.jspecify.annotations.NullMarked;
