import { useEffect, useState } from 'react'

/** A voice that reads a text aloud, and stops. */
export interface Voice {
  readonly speaking: boolean
  readonly say: (text: string) => void
  readonly stop: () => void
}

/** The browser's own voice; null where it has none. What it says belongs to one `topic` and ends with it. */
export function useVoice(topic: string): Voice | null {
  const [speaking, setSpeaking] = useState(false)
  const voice = typeof speechSynthesis === 'undefined' ? null : speechSynthesis
  // biome-ignore lint/correctness/useExhaustiveDependencies: another topic is what ends it
  useEffect(
    () => () => {
      voice?.cancel()
      setSpeaking(false)
    },
    [voice, topic],
  )
  if (!voice) return null
  return {
    speaking,
    say: (text) => {
      voice.cancel()
      const words = new SpeechSynthesisUtterance(text)
      words.lang = 'en'
      words.onend = () => setSpeaking(false)
      words.onerror = () => setSpeaking(false)
      setSpeaking(true)
      voice.speak(words)
    },
    stop: () => {
      voice.cancel()
      setSpeaking(false)
    },
  }
}
