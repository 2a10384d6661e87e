/** Argument checks and numerical kernels shared by the packages of this module; not exported. */
@NullMarked
package org.roastfield.core.internal;

import org.jspecify.annotations.NullMarked;
