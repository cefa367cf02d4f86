// The changelog by the form of keepachangelog.com: which releases it tells of, and what is wrong with it.

export interface Release {
  /** Absent where it is not released yet. */
  readonly version: string | undefined
  readonly date: string | undefined
  /** Such as "Added", in their order. */
  readonly sections: readonly string[]
}

const kinds = ['Added', 'Changed', 'Deprecated', 'Removed', 'Fixed', 'Security']
const heading = /^## \[(?:Unreleased|(\d+\.\d+\.\d+))\](?: - (\d{4}-\d{2}-\d{2}))?$/

/** As the file has them, the newest first. Throws an Error where a heading has another form. */
export const releasesIn = (text: string): readonly Release[] =>
  text
    .split(/^(?=## )/m)
    .filter(part => part.startsWith('## '))
    .map(part => {
      const [first = '', ...lines] = part.split('\n')
      const found = heading.exec(first)
      if (!found) throw new Error(`"${first}" is no heading of a release`)
      const sections = lines.flatMap(line => /^### (.+)$/.exec(line)?.[1] ?? [])
      return { version: found[1], date: found[2], sections }
    })

/** What does not hold together, in words for whoever releases. */
export function faultsOf(releases: readonly Release[]): readonly string[] {
  const released = releases.filter(({ version }) => version !== undefined)
  return [
    ...(releases[0]?.version === undefined ? [] : ['[Unreleased] does not stand first']),
    ...released.filter(({ date }) => date === undefined).map(({ version }) => `${version} has no date`),
    ...released.filter((one, at) => rank(one) <= rank(released[at + 1])).map(one => `${one.version} is not the newer`),
    ...releases.flatMap(({ sections }) => sections.filter(one => !kinds.includes(one))).map(one => `no kind: ${one}`),
  ]
}

const rank = (release: Release | undefined): number =>
  (release?.version ?? '0.0.0').split('.').reduce((sum, part) => sum * 1e4 + Number(part), 0)

/** What the next version is called, by what changed since the last; undefined where nothing did. */
export function nextVersion([unreleased, last]: readonly Release[]): string | undefined {
  const changed = unreleased?.sections ?? []
  if (changed.length === 0) return undefined
  const [major = 0, minor = 0, patch = 0] = (last?.version ?? '0.0.0').split('.').map(Number)
  const breaks = changed.includes('Removed')
  if (breaks && major > 0) return `${major + 1}.0.0`
  return changed.every(kind => kind === 'Fixed' || kind === 'Security')
    ? `${major}.${minor}.${patch + 1}`
    : `${major}.${minor + 1}.0`
}
