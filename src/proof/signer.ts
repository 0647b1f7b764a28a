/** Whoever can sign with one key: a device, or the workshop's root. The secret stays inside. @source definition */
export interface Signer {
  /** Ed25519 public key, 64 small hexadecimal digits. */
  readonly key: string
  /** Signature over bytes, 128 small hexadecimal digits. */
  readonly sign: (bytes: Uint8Array<ArrayBuffer>) => Promise<string>
}
