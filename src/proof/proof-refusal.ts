/** Why the proof room says no. @source definition */
export type ProofRefusal = 'not-json' | 'bad-key' | 'bad-code' | 'gap' | 'nothing-signed' | 'two-versions'
