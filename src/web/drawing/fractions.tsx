/** A text whose fractions are set as fractions: "1 1/12 turns" must not be taken for eleven twelfths. */
export function Fractions({ text }: { text: string }) {
  return text.split(/(\d+\/\d+)/).map((part, i) => {
    const [above, below] = i % 2 === 1 ? part.split('/') : []
    return below === undefined ? (
      part
    ) : (
      // biome-ignore lint/suspicious/noArrayIndexKey: the parts of one text keep their places
      <span key={i} className="fraction">
        <sup>{above}</sup>⁄<sub>{below}</sub>
      </span>
    )
  })
}
