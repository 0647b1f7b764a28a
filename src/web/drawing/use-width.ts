import { type RefObject, useLayoutEffect, useRef, useState } from 'react'

/** The width of an element in CSS pixels, so that drawings keep their line widths and letters at any size. */
export function useWidth<E extends Element>(usual: number): [RefObject<E | null>, number] {
  const element = useRef<E>(null)
  const [width, setWidth] = useState(usual)
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
  return [element, width]
}
