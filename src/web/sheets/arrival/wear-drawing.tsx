/** The tread in section, outer shoulder on the left: how it is worn. */
export function WearDrawing({ wear }: { wear: string }) {
  const line = lines[wear]
  return line ? (
    <svg className="wear-drawing" width="56" height="26" viewBox="0 0 56 26" aria-hidden="true">
      <path d="M3 24V8M53 24V8M3 24H53" />
      <path className="wear-tread" d={line} />
    </svg>
  ) : null
}

/** From the outer shoulder at 3 to the inner one at 53; lower is worn. */
const lines: Readonly<Record<string, string>> = {
  even: 'M3 8H53',
  'both shoulders': 'M3 16Q8 8 18 6H38Q48 8 53 16',
  centre: 'M3 6Q12 6 18 10Q28 18 38 10Q44 6 53 6',
  'outer shoulder': 'M3 18Q14 7 26 6H53',
  'inner shoulder': 'M3 6H30Q42 7 53 18',
  'feathered, sharp edge inward': 'M3 12L13 5V12L23 5V12L33 5V12L43 5V12L53 5',
  'feathered, sharp edge outward': 'M3 5L13 12V5L23 12V5L33 12V5L43 12V5L53 12',
  cups: 'M3 7Q11 17 19 7Q27 17 36 7Q44 17 53 7',
  'flat spot': 'M3 6H18L21 14H37L40 6H53',
}
