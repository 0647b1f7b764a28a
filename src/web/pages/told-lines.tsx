/** What was done or could not be, for eyes and ears. */
export function ToldLines({ lines }: { lines: readonly string[] }) {
  return (
    <div role="status">
      {lines.length > 0 && (
        <div className="beside-told">
          {lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
      )}
    </div>
  )
}
