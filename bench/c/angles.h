// The same algorithm as src/linkage/batch-row.ts, line by line.
#ifndef ANGLES_H
#define ANGLES_H

#include "numbers.h"
#include <math.h>

static inline void write_angles(double *out, double sx, double sy, double sz, double kx, double ky, double kz) {
  out[0] = -asin(sz);
  out[1] = atan2(sx, sy);
  out[2] = atan2(-kx, kz);
  out[3] = atan2(-ky, kz);
}

static inline void write_state(double *out, const double state[STATE], const Angles *a) {
  const double w = state[3], x = state[4], y = state[5], z = state[6];
  const double m00 = 1 - 2 * (y * y + z * z);
  const double m01 = 2 * (x * y - w * z);
  const double m02 = 2 * (x * z + w * y);
  const double m10 = 2 * (x * y + w * z);
  const double m11 = 1 - 2 * (x * x + z * z);
  const double m12 = 2 * (y * z - w * x);
  const double m20 = 2 * (x * z - w * y);
  const double m21 = 2 * (y * z + w * x);
  const double m22 = 1 - 2 * (x * x + y * y);
  const double px = a->spin[0], py = a->spin[1], pz = a->spin[2];
  const double sx = m00 * px + m01 * py + m02 * pz;
  const double sy = m10 * px + m11 * py + m12 * pz;
  const double sz = m20 * px + m21 * py + m22 * pz;
  if (!a->axis) {
    write_angles(out, sx, sy, sz, 0, 0, 1);
    out[2] = 0;
    out[3] = 0;
  } else {
    const double qx = a->upper[0] - a->lower[0], qy = a->upper[1] - a->lower[1], qz = a->upper[2] - a->lower[2];
    write_angles(out, sx, sy, sz, m00 * qx + m01 * qy + m02 * qz, m10 * qx + m11 * qy + m12 * qz,
                 m20 * qx + m21 * qy + m22 * qz);
  }
  out[4] = state[0];
  out[5] = state[1];
  out[6] = state[2];
  out[7] = 0;
}

#endif
