/**
 * Unknown numbers of cookers, cuts and probes: what they are called, who owns them, what is
 * believed of them before a cook is seen.
 */
@NullMarked
package org.roastfield.core.parameter;

import org.jspecify.annotations.NullMarked;
