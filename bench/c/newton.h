// The same algorithm as src/linkage/newton-kernel.ts, newton-rows.ts and solve-five.ts, line by line.
#ifndef NEWTON_H
#define NEWTON_H

#include "numbers.h"
#include <math.h>
#include <stdbool.h>

static const int most_steps = 7;
static const double longest_first = 0.35;
static const double small = 1e-7;

static inline void link_rows(const double *packed, const double *state, int from, double *rows) {
  const double cx = state[0], cy = state[1], cz = state[2];
  const double w = state[3], x = state[4], y = state[5], z = state[6];
  const double x2 = x + x, y2 = y + y, z2 = z + z;
  const double m00 = 1 - y * y2 - z * z2;
  const double m01 = x * y2 - w * z2;
  const double m02 = x * z2 + w * y2;
  const double m10 = x * y2 + w * z2;
  const double m11 = 1 - x * x2 - z * z2;
  const double m12 = y * z2 - w * x2;
  const double m20 = x * z2 - w * y2;
  const double m21 = y * z2 + w * x2;
  const double m22 = 1 - x * x2 - y * y2;
  for (int i = from; i < 5; i++) {
    const double *p = packed + 7 * i;
    double *at = rows + 6 * i;
    const double qx = p[0], qy = p[1], qz = p[2];
    const double rx = m00 * qx + m01 * qy + m02 * qz;
    const double ry = m10 * qx + m11 * qy + m12 * qz;
    const double rz = m20 * qx + m21 * qy + m22 * qz;
    const double dx = cx + rx - p[3];
    const double dy = cy + ry - p[4];
    const double dz = cz + rz - p[5];
    at[0] = dx;
    at[1] = dy;
    at[2] = ry * dz - rz * dy;
    at[3] = rz * dx - rx * dz;
    at[4] = rx * dy - ry * dx;
    at[5] = 0.5 * (p[6] - dx * dx - dy * dy - dz * dz);
  }
}

static inline void strut_rows(const double *packed, const double *state, double *rows) {
  const double w = state[3], x = state[4], y = state[5], z = state[6];
  const double tx = packed[9] - state[0];
  const double ty = packed[10] - state[1];
  const double tz = packed[11] - state[2];
  for (int j = 0; j < 2; j++) {
    const double *k = packed + 3 + 3 * j;
    const double nx = k[0] - 2 * (y * y + z * z) * k[0] + 2 * (x * y - w * z) * k[1] + 2 * (x * z + w * y) * k[2];
    const double ny = k[1] - 2 * (x * x + z * z) * k[1] + 2 * (x * y + w * z) * k[0] + 2 * (y * z - w * x) * k[2];
    const double nz = k[2] - 2 * (x * x + y * y) * k[2] + 2 * (x * z - w * y) * k[0] + 2 * (y * z + w * x) * k[1];
    double *at = rows + 6 * j;
    at[0] = -nx;
    at[1] = -ny;
    at[2] = tz * ny - ty * nz;
    at[3] = tx * nz - tz * nx;
    at[4] = ty * nx - tx * ny;
    at[5] = packed[0] * k[0] + packed[1] * k[1] + packed[2] * k[2] - (tx * nx + ty * ny + tz * nz);
  }
}

static inline double solve_five(const double *rows, double *out) {
  const double a00 = rows[0], a01 = rows[1], a02 = rows[2], a03 = rows[3], a04 = rows[4], a05 = rows[5];
  const double i0 = 1 / a00;
  double f = rows[6] * i0;
  const double a11 = rows[7] - f * a01, a12 = rows[8] - f * a02, a13 = rows[9] - f * a03;
  const double a14 = rows[10] - f * a04, a15 = rows[11] - f * a05;
  f = rows[12] * i0;
  const double b21 = rows[13] - f * a01, b22 = rows[14] - f * a02, b23 = rows[15] - f * a03;
  const double b24 = rows[16] - f * a04, b25 = rows[17] - f * a05;
  f = rows[18] * i0;
  const double b31 = rows[19] - f * a01, b32 = rows[20] - f * a02, b33 = rows[21] - f * a03;
  const double b34 = rows[22] - f * a04, b35 = rows[23] - f * a05;
  f = rows[24] * i0;
  const double b41 = rows[25] - f * a01, b42 = rows[26] - f * a02, b43 = rows[27] - f * a03;
  const double b44 = rows[28] - f * a04, b45 = rows[29] - f * a05;
  const double i1 = 1 / a11;
  f = b21 * i1;
  const double a22 = b22 - f * a12, a23 = b23 - f * a13, a24 = b24 - f * a14, a25 = b25 - f * a15;
  f = b31 * i1;
  const double c32 = b32 - f * a12, c33 = b33 - f * a13, c34 = b34 - f * a14, c35 = b35 - f * a15;
  f = b41 * i1;
  const double c42 = b42 - f * a12, c43 = b43 - f * a13, c44 = b44 - f * a14, c45 = b45 - f * a15;
  const double i2 = 1 / a22;
  f = c32 * i2;
  const double a33 = c33 - f * a23, a34 = c34 - f * a24, a35 = c35 - f * a25;
  f = c42 * i2;
  const double d43 = c43 - f * a23, d44 = c44 - f * a24, d45 = c45 - f * a25;
  const double i3 = 1 / a33;
  f = d43 * i3;
  const double a44 = d44 - f * a34;
  const double x4 = (d45 - f * a35) / a44;
  const double x3 = (a35 - a34 * x4) * i3;
  const double x2 = (a25 - a23 * x3 - a24 * x4) * i2;
  const double x1 = (a15 - a12 * x2 - a13 * x3 - a14 * x4) * i1;
  out[0] = (a05 - a01 * x1 - a02 * x2 - a03 * x3 - a04 * x4) * i0;
  out[1] = x1;
  out[2] = x2;
  out[3] = x3;
  out[4] = x4;
  return a00 * a11 * a22 * a33 * a44;
}

static inline int newton_settle(Newton *k, double state[STATE], double inner) {
  double *rows = k->rows, *step = k->step;
  if (k->rack_at >= 0) k->packed[k->rack_at] = inner;
  const double to_turn = 1 / k->size;
  double before = longest_first;
  for (int turn = 0; turn < most_steps; turn++) {
    link_rows(k->packed, state, k->first_link, rows);
    if (k->strut) strut_rows(k->packed, state, rows);
    const double determinant = solve_five(rows, step);
    const double vx = step[0], vy = step[1];
    const double hx = 0.5 * step[2], hy = 0.5 * step[3], hz = 0.5 * step[4];
    const double far = sqrt((vx * vx + vy * vy) * to_turn * to_turn + 4 * (hx * hx + hy * hy + hz * hz));
    if (!(far < before)) return false;
    state[0] += vx;
    state[1] += vy;
    const double w = state[3], x = state[4], y = state[5], z = state[6];
    const double w2 = w - hx * x - hy * y - hz * z;
    const double x2 = x + hx * w + hy * z - hz * y;
    const double y2 = y + hy * w + hz * x - hx * z;
    const double z2 = z + hz * w + hx * y - hy * x;
    const double scale = 1 / sqrt(w2 * w2 + x2 * x2 + y2 * y2 + z2 * z2);
    state[3] = w2 * scale;
    state[4] = x2 * scale;
    state[5] = y2 * scale;
    state[6] = z2 * scale;
    if (far < small) return determinant * k->sign > 0;
    before = 0.5 * far;
  }
  return false;
}

#endif
