/** One ink, two pages that hold on A4 as on Letter, readable when copied. Widths of letters differ: narrow faces first. */
export const paperStyle = `
@page { margin: 9mm 10mm }
:root { color-scheme: light; color: #17212b; background: #fff; font: 7.8pt/1.28 "IBM Plex Sans Condensed", "Arial Narrow", "Liberation Sans Narrow", "Nimbus Sans Narrow", "DejaVu Sans Condensed", Arial, sans-serif; font-variant-numeric: tabular-nums }
body { width: 190mm; margin: 0 auto; padding: 6mm }
.page + .page { break-before: page; margin-top: 6mm }
header { display: grid; grid-template-columns: 1.5fr .5fr .75fr 2.3fr; border: 1.2px solid }
header > div { padding: .7mm 1.6mm; border-left: .6px solid; overflow-wrap: anywhere }
header > div:first-child { border-left: 0 }
header small { display: block; font-size: 6pt; text-transform: uppercase; letter-spacing: .05em }
header b { font-size: 10pt; line-height: 1.1 }
h2 { font-size: 7.8pt; text-transform: uppercase; letter-spacing: .07em; border-bottom: 1px solid; margin: 1.5mm 0 .6mm; break-after: avoid }
h3 { font-size: 7.8pt; margin: 1.2mm 0 .3mm; break-after: avoid }
p { margin: .5mm 0 }
.two { display: grid; grid-template-columns: 107mm 1fr; column-gap: 4mm }
table { border-collapse: collapse; width: 100% }
tr { break-inside: avoid }
th, td { text-align: left; vertical-align: top; padding: .35mm 1.2mm .3mm 0; border-bottom: .4px solid #888; font-weight: normal }
thead th { font-size: 6.4pt; text-transform: uppercase; letter-spacing: .03em; border-bottom: .8px solid }
tbody th { font-weight: 600 }
small { font-weight: normal; font-size: 6.6pt }
.figure { white-space: nowrap; font-weight: 600 }
.readings { table-layout: fixed }
.dimension { width: 100%;  height: auto; display: block; font-size: 9px }
svg text { fill: currentColor; stroke: none }
ul, ol { margin: 0; padding: 0; list-style: none }
li { margin: .5mm 0; break-inside: avoid }
.moves li { display: grid; grid-template-columns: auto auto 1fr auto; gap: 1.6mm; align-items: center; border-bottom: .4px solid #888; padding-bottom: .5mm }
.moves .dial { width: 13mm; display: block }
.big { font-size: 9.4pt }
.maps { display: grid; grid-template-columns: 1fr 1fr; gap: 2mm }
.maps svg, .drawing svg { width: 100%; height: auto; display: block; font-size: 8px }
.poses { display: grid; grid-template-columns: 1fr 1fr; column-gap: 4mm }
.poses td { white-space: nowrap }
.poses + .mind { columns: 3; font-size: 6.6pt; line-height: 1.2; margin-top: .8mm }
.box { display: inline-block; width: 3.4mm; height: 3.4mm; border: 1px solid; flex: none; background: #fff }
.stop { border: 1.4px solid; padding: .6mm 2mm; margin-top: 1.2mm; font-weight: 600 }
.mind li::before { content: "! "; font-weight: 700 }
.mind { columns: 3; font-size: 6.9pt; line-height: 1.2; column-gap: 4mm }
.next { border: 1.4px solid; padding: 1mm 2mm; margin-top: 1.6mm; font-size: 9pt; break-inside: avoid; display: flex; gap: 2mm; align-items: center }
.bolts td, .bolts th { padding-right: 1.6mm }
.ring { width: 11mm; height: 11mm; font-size: 9px; float: right }
.closed { columns: 3; column-gap: 3mm; font-size: 7pt; line-height: 1.2 }
.quiet { font-size: 6.3pt; line-height: 1.2 }
.sign { display: grid; grid-template-columns: 1fr 1fr 1fr; gap: 4mm; margin-top: 2mm }
.sign div { border-bottom: 1px solid; height: 9mm; font-size: 6.4pt; display: flex; align-items: end }
footer { margin-top: 1.5mm; font-size: 6.4pt; border-top: .6px solid; padding-top: .6mm }
@media print { body { padding: 0 .4mm 0 0; width: auto } .page + .page { margin-top: 0 } }
`
