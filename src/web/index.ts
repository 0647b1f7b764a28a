import './shell/fonts.css'
import './shell/tokens.css'
import './shell/base.css'
import './shell/print.css'
import { open } from './shell/open.tsx'

open(document.getElementById('page')!)
