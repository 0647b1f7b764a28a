declare module 'pdfmake' {
  const pdfmake: {
    readonly virtualfs: { writeFileSync(name: string, content: Uint8Array): void }
    setUrlAccessPolicy(may: (url: string) => boolean): void
    /** Not in browsers, where there are no files. */
    setLocalAccessPolicy?(may: (path: string) => boolean): void
    setFonts(fonts: Readonly<Record<string, Readonly<Record<'normal' | 'bold', string>>>>): void
    createPdf(definition: unknown): { getBuffer(): Promise<Uint8Array> }
  }
  export default pdfmake
}
