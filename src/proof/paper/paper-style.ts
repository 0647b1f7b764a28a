import type { PaperSize } from './paper.ts'

/** One ink on white, readable when copied. Widths of letters differ from one machine to the next: narrow faces first. */
export const paperStyle = (size: PaperSize): string => `
@page { size: ${size === 'A4' ? 'A4' : 'letter'} portrait; margin: 10mm 11mm 11mm }
:root { color-scheme: light; color: #17212b; background: #fff; font: 7.7pt/1.22 "IBM Plex Sans Condensed", "Arial Narrow", "Liberation Sans Narrow", "Nimbus Sans Narrow", "DejaVu Sans Condensed", Arial, sans-serif; font-variant-numeric: tabular-nums }
body { max-width: 190mm; margin: 0 auto; padding: 6mm }
header { display: grid; grid-template-columns: 2fr .6fr .95fr .9fr 2fr; border: 1.3px solid }
header div { padding: .8mm 1.8mm; border-left: .6px solid; overflow-wrap: anywhere }
header div:first-child { border-left: 0 }
header small { display: block; font-size: 6pt; text-transform: uppercase; letter-spacing: .05em }
h1 { font-size: 12pt; line-height: 1.1; margin: 0 }
h2 { font-size: 8pt; text-transform: uppercase; letter-spacing: .07em; border-bottom: 1px solid; margin: 1.9mm 0 .6mm; break-after: avoid }
.seal { display: grid; grid-template-columns: 1fr 30mm; gap: 3mm; border: 1.3px solid; padding: 1.4mm 2mm; margin-top: 1.6mm; break-inside: avoid }
.seal p { margin: .4mm 0 }
.seal .said { font-size: 10.5pt; font-weight: 700; line-height: 1.2 }
.seal svg { width: 30mm; height: 30mm; display: block }
.figure { font-weight: 700; letter-spacing: .06em; white-space: nowrap }
table { border-collapse: collapse; width: 100%; table-layout: fixed }
tr, li, .short { break-inside: avoid }
.day { white-space: nowrap }
td, th { text-align: left; vertical-align: top; padding: .35mm 1.4mm .35mm 0; border-bottom: .4px solid #888; overflow-wrap: anywhere; font-weight: normal }
thead th { font-size: 6.4pt; text-transform: uppercase; letter-spacing: .03em; border-bottom: .8px solid }
td b { font-weight: 600 }
small { font-size: 6.6pt }
td small { display: block }
td svg[aria-hidden], li svg { width: 2.4mm; height: 2.4mm; vertical-align: -0.2mm; margin-right: .8mm }
td svg[role=img] { width: 100%; height: auto; display: block; margin: .3mm 0 }
ul { margin: 0; padding: 0; list-style: none; column-gap: 5mm }
li { margin: .3mm 0 }
li.stated { padding-left: 3.4mm; text-indent: -3.4mm }
.boxed { border: 1.3px solid; padding: 1mm 2mm }
p.note { margin: .5mm 0; font-size: 6.6pt }
.sign { display: grid; grid-template-columns: 1fr 1fr 1fr; gap: 5mm; margin-top: 6mm; break-inside: avoid }
.sign div { border-top: 1px solid; font-size: 6.6pt; padding-top: .4mm }
.demo { border: 1.3px dashed; padding: .6mm 2mm; margin-top: 1.6mm; font-weight: 600 }
footer { margin-top: 2mm; font-size: 6.4pt }
@media print { body { padding: 0; max-width: none } }
`
