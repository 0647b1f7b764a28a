/**
 * Length of the shortest path known, by instance.
 * Source: TSPLIB 95, sequential ordering problems (Ascheuer, Escudero and others), best known values, read in a public copy.
 */
export const sopKnown: Readonly<Record<string, number>> = {
  ESC07: 2125,
  ESC11: 2075,
  ESC12: 1675,
  ESC25: 1681,
  ESC47: 1288,
  ESC63: 62,
  ESC78: 18230,
  'br17.10': 55,
  'br17.12': 55,
  'ft53.1': 7531,
  'ft53.2': 8026,
  'ft53.3': 10262,
  'ft53.4': 14425,
  'ft70.1': 39313,
  'ft70.4': 53530,
  'p43.1': 28140,
  'p43.2': 28480,
  'p43.3': 28835,
  'p43.4': 83005,
  'prob.42': 243,
  rbg048a: 351,
  rbg050c: 467,
  'ry48p.1': 15805,
  'ry48p.2': 16666,
  'ry48p.3': 19894,
  'ry48p.4': 31446,
}
