/** 32 bytes from the platform's good random source, as 64 small hexadecimal digits. @source W3C Web Cryptography API, 10.1.1 */
export const randomSeed = (): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(32)), (byte) => byte.toString(16).padStart(2, '0')).join(
    '',
  )
