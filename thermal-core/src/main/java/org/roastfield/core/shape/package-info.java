/**
 * Shapes of cuts as seen by one space coordinate. Heat enters slabs and cylinders through the large
 * faces only. A compact piece is a body of the same core times; a tapering one is computed at
 * stations along it, which is wrong near its ends.
 */
@NullMarked
package org.roastfield.core.shape;

import org.jspecify.annotations.NullMarked;
