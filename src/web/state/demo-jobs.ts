/** The job that opens when the address names none. */
export const firstJob = 'port-unit-07'
