import { type RefObject, useLayoutEffect, useRef, useState } from 'react'
import { usePrinting } from './use-printing.ts'

/**
 * The width of an element in CSS pixels, so that drawings keep their line widths and letters at any size. On paper
 * nothing can be measured before it is laid out: there it is the width said.
 */
export function useWidth<E extends Element>(usual: number, paper = usual): [RefObject<E | null>, number] {
  const element = useRef<E>(null)
  const [width, setWidth] = useState(usual)
  const printing = usePrinting()
  useLayoutEffect(() => {
    const node = element.current
    if (!node) return
    const look = () => {
      const now = Math.round(node.getBoundingClientRect().width)
      if (now > 0) setWidth(now)
    }
    look()
    const observer = new ResizeObserver(look)
    observer.observe(node)
    return () => observer.disconnect()
  }, [])
  return [element, printing ? paper : width]
}
