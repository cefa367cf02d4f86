// Text in a picture: made safe for XML, and how wide it will be in DejaVu Sans.

// biome-ignore lint/suspicious/noControlCharactersInRegex: XML 1.0 allows none of these but tab and line ends.
const notInXml = /[\u0000-\u001F\u007F-\u009F\uFFFE\uFFFF]+/g

/** One line without what XML 1.0 cannot hold. */
export const drawable = (text: string): string => text.toWellFormed().replace(notInXml, ' ').trim()

const thin = /[ \u00A0\u202F.,:;'|iljI]/
const narrow = /[!()[\]ftr]/
const wide = /[mwMW%@—→]|[\u0530-\u1FFF\u2300-\u{10FFFF}]/u

/** Width in px at `size_px`: rather too wide, by a fifth at most for ordinary text. */
export function textWidth(text: string, size_px: number, bold = false): number {
  let em = 0
  for (const character of text) em += emOf(character)
  return em * size_px * (bold ? 1.1 : 1)
}

function emOf(character: string): number {
  if (thin.test(character)) return 0.33
  if (narrow.test(character)) return 0.41
  return wide.test(character) ? 1 : 0.65
}

/** As much of `text` as is no wider than `width_px`, with an ellipsis where some is lost; '' where none fits. */
export const fitted = (text: string, width_px: number, size_px: number): string =>
  shortened(text, width_px, size_px, kept => [kept, 0])

/** The same, but what is lost is in the middle: names of packs often differ at their end. */
export const fittedName = (text: string, width_px: number, size_px: number): string =>
  shortened(text, width_px, size_px, kept => [Math.ceil(kept / 2), Math.floor(kept / 2)])

/** `parts` says how many characters of its head and of its tail are left where so many are. */
function shortened(text: string, width_px: number, size_px: number, parts: (kept: number) => [number, number]): string {
  if (textWidth(text, size_px) <= width_px) return text
  const characters = [...text]
  for (let kept = characters.length - 1; kept > 0; kept--) {
    const [head, tail] = parts(kept)
    const [first, last] = [characters.slice(0, head), characters.slice(characters.length - tail)].map(some =>
      some.join(''),
    )
    const shorter = `${first?.trimEnd()}…${last?.trimStart()}`
    if (textWidth(shorter, size_px) <= width_px) return shorter
  }
  return ''
}

/** Bold lines no wider than `width_px`, parted between words; a word that is wider alone is cut. */
export function wrapped(text: string, width_px: number, size_px: number): string[] {
  const lines: string[] = []
  for (const word of text.split(' ')) {
    const longer = lines.length > 0 ? `${lines.at(-1)} ${word}` : word
    if (lines.length > 0 && textWidth(longer, size_px, true) <= width_px) lines[lines.length - 1] = longer
    else lines.push(fitted(word, width_px / 1.1, size_px))
  }
  return lines
}
