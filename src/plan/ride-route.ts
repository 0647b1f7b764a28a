/** How a joint that is final at ride height gets there. @source definition */
export type RideRoute = 'on its wheels' | 'jack under the arm'
