// A plain yes or no to a question of ours.

const yes = /^(?:y|yes|yep|yeah|yup|ok|okay|sure|do it|do so|go ahead|please do|confirm(?:ed)?|right|correct|1)\b/i
const no = /^(?:n|no|nope|nah|leave (?:it|that)|don'?t|do not|never ?mind|stop|cancel|wait|better not|2)\b/i
const fewWords = 4

/** Undefined where it is neither, or goes on to something else. */
export function yesOrNo(text: string): 'yes' | 'no' | undefined {
  const plain = text.trim().replace(/^[^\p{L}\d]+/u, '')
  if (plain.split(/\s+/).length > fewWords || /\d.*\d|\d [a-z]/i.test(plain)) return undefined
  if (no.test(plain)) return 'no'
  return yes.test(plain) ? 'yes' : undefined
}
