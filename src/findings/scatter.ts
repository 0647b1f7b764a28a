/** Standard deviation of every coordinate of a point between two vehicles of one model, m. @source from memory, common practice, no source */
export const makingSpread = 0.0008
/** Of the design camber and toe between the two sides, rad. @source from memory, common practice, no source */
export const makingCamber = 0.0017
/** Of the design camber and toe of a model whose points are typical, rad. @source own choice */
export const modelCamber = 0.006
export const modelToe = 0.0009
/** Ride height of a sound vehicle, m: of each spring, and of both of an axle together (load). @source from memory, common practice, no source */
export const springSpread = 0.004
export const axleSpringSpread = 0.007
/**
 * Of the mark on the body that a height is read against (an arch's edge), and of what lets four wheels stand on a warped
 * plane (springs of unlike rate, tyres of unlike wear, a body that gives), m. @source from memory, common practice, no source
 */
export const bodyMarkSpread = 0.0015
/** Camber, toe and kingpin of one end of a whole axle as made, rad. @source from memory, common practice, no source */
export const axleCamber = 0.0025
export const axleToe = 0.0012
