/** One ink, A4 and Letter, readable when copied. */
export const paperStyle = `
@page { margin: 14mm }
:root { color-scheme: light; font: 10.5pt/1.4 "IBM Plex Sans", "Segoe UI", "DejaVu Sans", sans-serif; color: #17212b }
body { max-width: 190mm; margin: 0 auto; padding: 6mm; background: #fff }
h1 { font-size: 18pt; margin: 0 0 2mm }
h2 { font-size: 11pt; text-transform: uppercase; letter-spacing: .06em; border-bottom: 1px solid; margin: 6mm 0 2mm }
h3 { font-size: 11pt; margin: 4mm 0 1mm }
table { border-collapse: collapse; width: 100%; break-inside: auto }
tr { break-inside: avoid }
th, td { text-align: left; vertical-align: top; padding: 1.2mm 2mm 1.2mm 0; border-bottom: .5px solid #999; font-weight: normal }
thead th { font-size: 8.5pt }
tbody th { font-weight: 600 }
.block td { border: 1px solid; padding: 1.2mm 2mm }
.figure { font-variant-numeric: tabular-nums; white-space: nowrap; font-weight: 600 }
small { font-weight: normal; font-size: 8.5pt }
svg { width: 78mm; height: auto; font-size: 10px }
svg text { fill: currentColor }
.dial { width: 22mm; flex: none }
.moves { padding-left: 6mm }
.moves li { margin: 2mm 0; break-inside: avoid }
.moves li > * { vertical-align: middle; display: inline-block; margin-right: 3mm }
.box { width: 5mm; height: 5mm; border: 1.2px solid }
.caution { border-left: 3px double; padding-left: 8mm }
.stop { border: 1.5px solid; padding: 2mm 4mm 2mm 8mm; font-weight: 600 }
footer { margin-top: 6mm; font-size: 8.5pt; border-top: 1px solid; padding-top: 2mm }
@media print { body { padding: 0; max-width: none } }
`
