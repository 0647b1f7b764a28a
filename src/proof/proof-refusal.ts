/** Why the proof room says no. @source definition */
export type ProofRefusal = 'not-json' | 'bad-key' | 'gap' | 'nothing-signed' | 'two-versions'
