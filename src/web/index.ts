import './shell/fonts.css'
import './shell/tokens.css'
import './shell/base.css'
import { open } from './shell/open.tsx'
// Last, so that paper has the last word.
import './shell/print.css'

open(document.getElementById('page')!)
