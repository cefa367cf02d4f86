// The walk of DEVELOPERS.md as steps: what is typed with what it shows, and what is changed.

/** A command with the lines that it shows, where "…" stands for anything; or a change to files. */
export type Step =
  | { readonly kind: 'typed'; readonly command: string; readonly shown: readonly string[] }
  | { readonly kind: 'changed'; readonly diff: string }

/** The steps in the section of a document with this title. Throws an Error where it has none. */
export function walkIn(document: string, title: string): readonly Step[] {
  const section = document.split(/^## /m).find(one => one.startsWith(`${title}\n`))
  if (section === undefined) throw new Error(`no section is named "${title}"`)
  return [...section.matchAll(/^```(console|diff)\n([\s\S]*?)^```$/gm)].flatMap(([, kind, text = '']): Step[] =>
    kind === 'diff' ? [{ kind: 'changed', diff: text }] : typedIn(text),
  )
}

const typedIn = (text: string): Step[] =>
  text
    .split(/^\$ /m)
    .slice(1)
    .map(one => {
      const [command = '', ...shown] = one.trimEnd().split('\n')
      return { kind: 'typed', command, shown }
    })

/** Whether a text has these lines in their order; between two of them others only where "…" stands alone. */
export function shows(text: string, lines: readonly string[]): boolean {
  const pattern = lines.map(line =>
    line === '…' ? '(?:.*\\n)*?' : `${RegExp.escape(line).replaceAll('…', '.*')} *\\n`,
  )
  return new RegExp(`^${pattern.join('')}$`).test(`${text.trimEnd()}\n`)
}
