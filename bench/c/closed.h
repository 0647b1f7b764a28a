// The same algorithm as src/linkage/wishbone-closed.ts and closed-kernel.ts, line by line.
#ifndef CLOSED_H
#define CLOSED_H

#include "numbers.h"
#include <math.h>
#include <stdbool.h>

static const double least_room = 0.02;
static const double least_rate = 0.15;
static const double largest_turn = 1;
static const double settled = 1e-15;

static inline bool wishbone_closed(const double *k, double phi, double rack, double *out) {
  const double cs = cos(phi), sn = sin(phi);
  const double lx = k[0] + cs * k[3] + sn * k[6];
  const double ly = k[1] + cs * k[4] + sn * k[7];
  const double lz = k[2] + cs * k[5] + sn * k[8];
  const double wx = lx - k[14], wy = ly - k[15], wz = lz - k[16];
  const double r = k[23];
  const double al = wx * k[17] + wy * k[18] + wz * k[19];
  const double be = wx * k[20] + wy * k[21] + wz * k[22];
  const double ga = (wx * wx + wy * wy + wz * wz + r * r - k[24]) / (2 * r);
  const double ab = al * al + be * be;
  const double room1 = ab - ga * ga;
  if (!(room1 >= 0)) return false;
  const double root1 = k[26] * sqrt(room1);
  const double c = (al * ga - be * root1) / ab;
  const double s = (be * ga + al * root1) / ab;
  const double d = 1 / k[25];
  const double e1x = (r * (c * k[17] + s * k[20]) - wx) * d;
  const double e1y = (r * (c * k[18] + s * k[21]) - wy) * d;
  const double e1z = (r * (c * k[19] + s * k[22]) - wz) * d;
  const double t1 = k[27], t2 = k[28];
  const double gx = k[9] - lx - t1 * e1x;
  const double gy = k[10] + rack - ly - t1 * e1y;
  const double gz = k[11] - lz - t1 * e1z;
  const double g1 = gx * e1x + gy * e1y + gz * e1z;
  const double px = gx - g1 * e1x, py = gy - g1 * e1y, pz = gz - g1 * e1z;
  const double h = px * px + py * py + pz * pz;
  const double q = (h + g1 * g1 + t2 * t2 - k[12]) / (2 * t2);
  const double room2 = h - q * q;
  if (!(room2 >= 0)) return false;
  const double root2 = k[13] * sqrt(room2);
  const double ih = 1 / h;
  const double e2x = (q * px + root2 * (e1y * pz - e1z * py)) * ih;
  const double e2y = (q * py + root2 * (e1z * px - e1x * pz)) * ih;
  const double e2z = (q * pz + root2 * (e1x * py - e1y * px)) * ih;
  const double e3x = e1y * e2z - e1z * e2y;
  const double e3y = e1z * e2x - e1x * e2z;
  const double e3z = e1x * e2y - e1y * e2x;
  const double hx = k[29] * e1x + k[30] * e2x + k[31] * e3x;
  const double hy = k[29] * e1y + k[30] * e2y + k[31] * e3y;
  const double hz = k[29] * e1z + k[30] * e2z + k[31] * e3z;
  out[0] = lx + hx;
  out[1] = ly + hy;
  out[2] = lz + hz;
  out[3] = k[32] * e1x + k[33] * e2x + k[34] * e3x;
  out[4] = k[32] * e1y + k[33] * e2y + k[34] * e3y;
  out[5] = k[32] * e1z + k[33] * e2z + k[34] * e3z;
  out[6] = e1x;
  out[7] = e1y;
  out[8] = e1z;
  out[9] = lx;
  out[10] = ly;
  out[11] = lz;
  out[12] = e2x;
  out[13] = e2y;
  out[14] = e2z;
  const double dx = cs * k[6] - sn * k[3];
  const double dy = cs * k[7] - sn * k[4];
  const double dz = cs * k[8] - sn * k[5];
  const double tx = c * k[20] - s * k[17];
  const double ty = c * k[21] - s * k[18];
  const double tz = c * k[22] - s * k[19];
  const double psi = (e1x * dx + e1y * dy + e1z * dz) / (e1x * tx + e1y * ty + e1z * tz);
  const double fx = (psi * tx - dx) * d;
  const double fy = (psi * ty - dy) * d;
  const double fz = (psi * tz - dz) * d;
  const double ox = e1y * fz - e1z * fy;
  const double oy = e1z * fx - e1x * fz;
  const double oz = e1x * fy - e1y * fx;
  const double ax = t1 * e1x + t2 * e2x;
  const double ay = t1 * e1y + t2 * e2y;
  const double az = t1 * e1z + t2 * e2z;
  const double mx = lx + ax - k[9];
  const double my = ly + ay - k[10] - rack;
  const double mz = lz + az - k[11];
  const double push =
      mx * (dx + oy * az - oz * ay) + my * (dy + oz * ax - ox * az) + mz * (dz + ox * ay - oy * ax);
  const double turn = -push / (t2 * (mx * e3x + my * e3y + mz * e3z));
  out[15] = dz + (ox + turn * e1x) * hy - (oy + turn * e1y) * hx;
  const double free1 = room1 / ab, free2 = room2 / h;
  out[16] = free1 < free2 ? free1 : free2;
  return true;
}

static inline double closed_angle(Closed *k, double travel, double rack, double from) {
  const double *numbers = k->numbers;
  double *out = k->out;
  const double rate = k->rate;
  const double want = k->home + travel;
  double phi = from;
  for (int turn = 0; turn < 12; turn++) {
    if (!wishbone_closed(numbers, phi, rack, out) || out[16] < least_room ||
        out[15] * rate < least_rate * rate * rate)
      return NAN;
    const double step = (want - out[2]) / out[15];
    if (fabs(step) < settled || (turn > 0 && fabs(step) < 4e-16)) return phi;
    phi += step;
    if (!(fabs(phi) < largest_turn)) return NAN;
    if (fabs(step) < 1e-9) {
      wishbone_closed(numbers, phi, rack, out);
      return phi;
    }
  }
  return NAN;
}

#endif
