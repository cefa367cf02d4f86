// What is installed beside the program, under which licences, by the lock file: whatever machine it is read on.

import { readFileSync } from 'node:fs'

export interface Installed {
  readonly name: string
  readonly version: string
  readonly licence: string
}

interface Locked {
  readonly version: string
  readonly license?: string
  readonly dev?: boolean
}

/** They ask for their text to be kept, and MPL-2.0 for changes to its own files: we change none. */
const fit = ['0BSD', 'Apache-2.0', 'BSD-2-Clause', 'BSD-3-Clause', 'BlueOak-1.0.0', 'ISC', 'MIT', 'MPL-2.0']

/** Read by a person, where a package names none by its sign. */
const read: Readonly<Record<string, string>> = { 'dejavu-fonts-ttf': 'Bitstream-Vera' }

/** All that is installed without development dependencies, on any platform, by name. */
export function installed(): readonly Installed[] {
  const { packages } = JSON.parse(readFileSync('package-lock.json', 'utf8')) as { packages: Record<string, Locked> }
  const found = Object.entries(packages)
    .filter(([path, { dev }]) => path !== '' && !dev)
    .map(([path, { version, license = 'none' }]) => {
      const name = path.split('node_modules/').at(-1) ?? path
      return { name, version, licence: read[name] ?? license }
    })
  return found.toSorted((one, other) => (one.name < other.name ? -1 : 1))
}

export const unfit = (packages: readonly Installed[]): readonly Installed[] =>
  packages.filter(({ name, licence }) => !fit.includes(licence) && licence !== read[name])

/** The page of the documents. */
export function licencesPage(packages = installed()): string {
  const byLicence = [...Map.groupBy(packages, ({ licence }) => licence)].toSorted(([one], [other]) =>
    one < other ? -1 : 1,
  )
  const rows = byLicence.map(([licence, those]) => {
    const names = [...new Set(those.map(({ name, version }) => `${name} ${version}`))]
    return `| ${licence} | ${names.join(', ')} |`
  })
  return `# Licences

Chargehand is under the [MIT licence](../LICENSE). What is installed with it, on any platform; \`npm run release -- --dry\`
fails where one is unknown or unfit.

| licence | packages |
|---|---|
${rows.join('\n')}
`
}
