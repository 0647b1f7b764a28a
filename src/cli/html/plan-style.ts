/** One ink, readable at arm's length and when copied: a card that hangs beside the vehicle. */
export const planStyle = `
@page { margin: 10mm 11mm }
:root { color-scheme: light; color: #17212b; background: #fff; font: 8.6pt/1.25 "IBM Plex Sans Condensed", "Arial Narrow", "Liberation Sans Narrow", "Nimbus Sans Narrow", "DejaVu Sans Condensed", Arial, sans-serif; font-variant-numeric: tabular-nums }
body { width: 188mm; margin: 0 auto; padding: 6mm }
header { display: grid; grid-template-columns: 1.3fr .5fr 2.2fr; border: 1.2px solid }
header > div { padding: .8mm 1.8mm; border-left: .6px solid; overflow-wrap: anywhere }
header > div:first-child { border-left: 0 }
header small { display: block; font-size: 6.4pt; text-transform: uppercase; letter-spacing: .05em }
header b { font-size: 11pt; line-height: 1.1 }
h1 { font-size: 14pt; line-height: 1.15; margin: 2.4mm 0 .6mm }
h2 { font-size: 8pt; text-transform: uppercase; letter-spacing: .07em; border-bottom: 1px solid; margin: 2.4mm 0 .8mm; break-after: avoid }
p { margin: .6mm 0 }
ul { margin: 0; padding: 0; list-style: none }
.have, .after { columns: 2; column-gap: 6mm }
.have li, .after li { display: grid; grid-template-columns: 5mm 1fr; margin: .5mm 0; break-inside: avoid }
.have small, .after small { display: block }
small { font-size: 7pt; font-weight: normal }
.stop, .mind { border: 1.4px solid; padding: .8mm 2mm; margin-top: 1.6mm; font-weight: 600 }
.mind { font-weight: normal }
.mind li::before, .care li::before { content: "! "; font-weight: 700 }
table { border-collapse: collapse; width: 100%; table-layout: fixed; margin-top: 2.6mm }
thead { break-after: avoid }
thead th { text-align: left; font-size: 9.4pt; border: 1.4px solid; padding: .8mm 1.8mm }
thead b { display: inline-block; min-width: 6mm; font-size: 11pt }
thead small { float: right; padding-top: .5mm }
tbody tr { break-inside: avoid }
tbody td { vertical-align: top; padding: .7mm 1.6mm .6mm 0; border-bottom: .4px solid #888; overflow-wrap: anywhere }
.number { text-align: right; padding-right: 1.6mm; font-size: 7.4pt }
.letter { display: inline-block; min-width: 4mm; text-align: center; border: .8px solid; border-radius: 2.2mm; font-weight: 700; line-height: 3.9mm; height: 4mm; padding: 0 .6mm; box-sizing: border-box }
.value { font-weight: 700 }
.value .note { font-weight: normal }
.what { font-weight: 600 }
.care li, .note { font-size: 7.2pt; line-height: 1.2 }
.care li { font-weight: normal }
.wrong { border-left: 3px solid; padding-left: 1.6mm; margin: .4mm 0 }
.box { display: inline-block; width: 3.4mm; height: 3.4mm; border: 1px solid; box-sizing: border-box; background: #fff; vertical-align: -.5mm }
.sign { display: grid; grid-template-columns: 1fr 1fr 1fr; gap: 5mm; margin-top: 3mm; break-inside: avoid }
.sign div { border-bottom: 1px solid; height: 10mm; font-size: 6.8pt; display: flex; align-items: end }
footer { margin-top: 2mm; font-size: 6.8pt; border-top: .6px solid; padding-top: .8mm; break-inside: avoid }
@media print { body { padding: 0; width: auto } }
`
